import { describe, expect, test } from 'vitest'
import { openLexicon } from '../../../src/words/lexicon/lexicon.js'
import { shownPiece, soundsInWords } from '../../../src/words/sounds-in-words.js'
import { studyWord } from '../../../src/words/study.js'

const lexicon = openLexicon()
const texts = [...lexicon.entries()]
  .filter(({ pronunciations }) => pronunciations.length > 0)
  .slice(0, 20_000)
  .map(({ word }) => word)

function study(text: string, sounds?: readonly string[]) {
  const overrides = sounds === undefined ? {} : { sounds }
  const outcome = studyWord({ text, place: { file: 'words.txt' }, overrides }, lexicon)
  if (!outcome.ok) throw new Error(`${text}: ${outcome.problems[0]!.message}`)
  return outcome
}

describe('the division that study prints of the 20,000 most familiar words', () => {
  const again = texts.map(text => {
    const { value } = study(text)
    return { text, printed: soundsInWords(value), own: study(text, value.pieces.map(shownPiece)) }
  })

  test('is taken back as it stands', () => {
    const changed = again.filter(({ printed, own }) => soundsInWords(own.value) !== printed)
    expect(changed.map(({ text }) => text)).toEqual([])
  })

  test('is never odd', () => {
    expect(again.flatMap(({ own }) => own.problems.map(({ message }) => message))).toEqual([])
  })
})
