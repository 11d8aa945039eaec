import { disk } from '../plan/disk/disk.js'
import type { PlanWord } from '../plan/plan.js'
import { nearestAdvice } from '../plan/values/nearest.js'
import { typedWordList } from '../plan/words/typed-words.js'
import type { Outcome } from '../problems.js'
import { type FindQuery, type FoundWord, findWords, wordsToOffer } from '../words/find.js'
import { openLexicon } from '../words/lexicon/lexicon.js'
import { patternNames } from '../words/patterns/index.js'
import { piecesInWords } from '../words/sounds-in-words.js'
import { studyWord } from '../words/study.js'
import type { Word } from '../words/word.js'
import { commaList } from './comma-list.js'
import { type CommandResult, resultOf, wrongUsage } from './command-result.js'
import { wordJson } from './word-json.js'
import { wrapLine } from './wrap-line.js'

export interface FindOptions {
  readonly pattern?: readonly string[] | undefined
  readonly letters?: string | undefined
  readonly place?: 'beginning' | 'middle' | 'end' | undefined
  readonly sounds?: number | undefined
  readonly syllables?: number | undefined
  readonly like?: string | undefined
  readonly count: number
  readonly json: boolean
}

/** `oaktag find`: words that fit, the most familiar first, nothing unfit for children. */
export async function findCommand(options: FindOptions): Promise<CommandResult> {
  const patterns = commaList(options.pattern ?? []).map(name => name.toLowerCase().replaceAll(/[\s_]+/g, '-'))
  const refusal = refuse(options, patterns)
  if (refusal !== undefined) return refusal
  const lexicon = openLexicon()
  const like = options.like === undefined ? undefined : studyTyped(options.like, lexicon)
  if (like !== undefined && !like.ok) return resultOf('', like.problems)
  const { letters, place, sounds, syllables, count } = options
  const query: FindQuery = {
    count,
    ...(patterns.length === 0 ? {} : { patterns }),
    ...(letters === undefined ? {} : { letters: letters.toLowerCase() }),
    ...(place === undefined ? {} : { place }),
    ...(sounds === undefined ? {} : { sounds }),
    ...(syllables === undefined ? {} : { syllables }),
    ...(like === undefined ? {} : { like: like.value }),
  }
  const found = findWords(query, {
    words: wordsToOffer(lexicon),
    pronunciationOf: text => lexicon.lookUp(text)?.pronunciations[0],
    study: text => {
      const studied = studyWord(planWordFor(text), lexicon)
      return studied.ok ? studied.value : undefined
    },
  })
  if (options.json)
    return resultOf(
      JSON.stringify(
        found.map(({ word, why }) => ({ ...wordJson(word), why })),
        null,
        2,
      ),
    )
  return resultOf(found.length === 0 ? 'No familiar word fits all of that.' : describe(found))
}

function refuse(options: FindOptions, patterns: readonly string[]): CommandResult | undefined {
  const { letters, sounds, syllables, like, count, place } = options
  if (patterns.length === 0 && [letters, sounds, syllables, like].every(wish => wish === undefined))
    return wrongUsage(
      'find needs a wish',
      'For example: oaktag find --pattern digraph-blend --place beginning.',
    )
  const unknown = patterns.find(name => !patternNames.includes(name))
  if (unknown !== undefined)
    return wrongUsage(
      `unknown pattern "${unknown}"`,
      nearestAdvice(unknown, patternNames, 'oaktag list patterns shows all.'),
    )
  if (letters !== undefined && !/^[a-z'_-]{1,30}$/i.test(letters))
    return wrongUsage(`"${letters}" is not letters`, 'Write letters such as sh, or a_e for a split team.')
  if (place !== undefined && patterns.length === 0 && letters === undefined)
    return wrongUsage(
      '--place needs a pattern or letters',
      'Say what is to stand there, with --pattern or --letters.',
    )
  for (const [name, value] of Object.entries({ sounds, syllables, count }))
    if (value !== undefined && !(Number.isInteger(value) && value >= 1 && value <= 10_000))
      return wrongUsage(`--${name} takes a whole number from 1`, `For example --${name} 3.`)
  return undefined
}

function studyTyped(text: string, lexicon: ReturnType<typeof openLexicon>): Outcome<Word> {
  const read = typedWordList({ words: [text], files: disk, patterns: patternNames })
  return read.ok ? studyWord(read.value[0]!, lexicon) : read
}

function planWordFor(text: string): PlanWord {
  return { text, place: { file: 'lexicon' }, overrides: {} }
}

/** Words in a column, their sounds and the reason beside them. */
function describe(found: readonly FoundWord[]): string {
  const width = Math.max(...found.map(({ word }) => word.text.length))
  return found
    .flatMap(({ word, why }) => {
      return wrapLine(`${word.text.padEnd(width)}  ${piecesInWords(word)}${why === '' ? '' : `  ${why}`}`, 80)
    })
    .join('\n')
}
