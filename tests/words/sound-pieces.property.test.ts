import { describe, expect, test } from 'vitest'
import { present } from '../../src/outcomes.js'
import type { CountSounds } from '../../src/plan/plan.js'
import { openLexicon } from '../../src/words/lexicon/lexicon.js'
import { shownPiece, soundsInWords } from '../../src/words/sounds-in-words.js'
import { studyWord } from '../../src/words/study.js'
import type { Word } from '../../src/words/word.js'

const lexicon = openLexicon()
const texts = [...lexicon.entries()]
  .filter(({ pronunciations }) => pronunciations.length > 0)
  .slice(0, 20_000)
  .map(({ word }) => word)

function study(text: string, countSounds: CountSounds, sounds?: readonly string[]) {
  const overrides = present({ sounds })
  const outcome = studyWord({ text, place: { file: 'words.txt' }, overrides }, lexicon, { countSounds })
  if (!outcome.ok) throw new Error(`${text}: ${outcome.problems[0]!.message}`)
  return outcome
}

const ways = ['as taught', 'every phoneme'] as const
const studied = new Map(ways.map(way => [way, texts.map(text => study(text, way).value)]))

const textsWhere = (words: readonly Word[], holds: (word: Word) => boolean) =>
  words.filter(holds).map(({ text }) => text)

const numbers = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven']

/** As a reader counts: every piece outside brackets is one, or what the sentences behind the pieces say. */
function countedByReading(line: string): number {
  const [shown = '', ...sentences] = line.replace(/^\d+: /, '').split(', ')
  const said = sentences.join(', ')
  const heard = shown.split('·').filter(piece => !piece.startsWith('('))
  const counts = [...said.matchAll(/(\S.*?) counts? (\w+)/g)].flatMap(([, names = '', number = '']) =>
    names.split(/, | and /).map(name => [name.trim(), numbers.indexOf(number)] as const),
  )
  return heard.reduce((sum, piece, index) => {
    const letters = piece.replaceAll(/['-]/g, '')
    const place = heard.slice(0, index).filter(other => other.replaceAll(/['-]/g, '') === letters).length
    const ordinal = ['first', 'second', 'third', 'fourth'][place]
    const own = counts.find(([name]) =>
      [letters, `each ${letters}`, `the ${ordinal} ${letters}`].includes(name),
    )
    return sum + (own?.[1] ?? 1)
  }, 0)
}

describe.each(ways)('the 20,000 most familiar words, %s', way => {
  const words = studied.get(way)!

  test('are twenty thousand', () => {
    expect(words).toHaveLength(20_000)
  })

  test('have pieces whose letters add up to the word', () => {
    expect(
      textsWhere(words, ({ text, pieces }) => pieces.map(({ letters }) => letters).join('') !== text),
    ).toEqual([])
  })

  test('have pieces whose counts add up to the number of sounds', () => {
    const sum = ({ pieces }: Word) => pieces.reduce((all, { counts }) => all + counts, 0)
    expect(textsWhere(words, word => sum(word) !== word.soundCount)).toEqual([])
  })

  test('have pieces that count nothing where they are silent, and nowhere else', () => {
    expect(
      textsWhere(words, ({ pieces }) => pieces.some(piece => piece.silent !== (piece.counts === 0))),
    ).toEqual([])
  })

  test('are said in words that a reader counts to the same number', () => {
    expect(textsWhere(words, word => countedByReading(soundsInWords(word)) !== word.soundCount)).toEqual([])
  })

  test('never count more sounds than phonemes', () => {
    expect(textsWhere(words, word => word.soundCount > word.phonemeCount)).toEqual([])
  })
})

describe('the 20,000 most familiar words, as taught', () => {
  const words = studied.get('as taught')!

  test('count two for x and qu alone, and more for nothing', () => {
    const other = textsWhere(words, ({ pieces }) =>
      pieces.some(({ letters, counts }) => counts > 2 || (counts === 2 && !/x|qu/i.test(letters))),
    )
    expect(other).toEqual([])
  })

  // What is asked of each is kept, and no more: the words themselves are twenty thousand again.
  const again = words.map(word => {
    const { value, problems } = study(word.text, 'as taught', word.pieces.map(shownPiece))
    return { word, printed: soundsInWords(value), odd: problems.map(({ message }) => message) }
  })

  test('are divided by their teacher as study prints them, and stay as they stand', () => {
    const changed = again.filter(({ word, printed }) => printed !== soundsInWords(word))
    expect(changed.map(({ word }) => word.text)).toEqual([])
  })

  test('are never divided oddly', () => {
    expect(again.flatMap(({ odd }) => odd)).toEqual([])
  })
})
