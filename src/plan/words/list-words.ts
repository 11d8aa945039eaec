/** The words of a list whose entries are read, wherever they stood: in a plan, in a file, on the command line. */

import { failWith, outcomeOf, together } from '../../outcomes.js'
import { errorAt, type Outcome, type Place, type Problem, warningAt } from '../../problems.js'
import { tooMany } from '../most-entries.js'
import type { PlanWord } from '../plan.js'
import { repetitions } from '../values/repetitions.js'
import type { Entry } from '../yaml/entry.js'
import { valueAt } from '../yaml/keys.js'
import { readWord, type WordContext } from './word-entry.js'
import { eachWordOnce, sameWord, straightened } from './word-text.js'

export interface WordEntries {
  readonly items: readonly EntryInFile[]
  /** The file that names them, or holds them all. */
  readonly file: string
}

export interface EntryInFile {
  readonly entry: Entry
  /** The file that it stands in. */
  readonly file: string
}

/** The words, each once; every problem of every word, or that they are more than can be meant. */
export function readWords(entries: WordEntries, context: WordContext): Outcome<readonly PlanWord[]> {
  const tooLong = tooMany('words', entries.items, entries.items[0]?.entry.place ?? { file: entries.file })
  // It is another file, or a slip: what else is wrong with hundreds of thousands of words helps nobody.
  if (tooLong.length > 0) return failWith(tooLong)
  const words = together(entries.items.map(({ entry, file }) => readWord(entry, { ...context, file })))
  const problems = [...words.problems, ...repeated(typedWords(entries))]
  return words.ok ? outcomeOf(eachWordOnce(words.value), problems) : failWith(problems)
}

export interface TypedWord {
  readonly text: string
  readonly place: Place
}

/**
 * The words as typed, whether or not the entry can be read, so that what refers to a word can be checked although
 * its clue has a problem.
 */
export function typedWords({ items }: WordEntries): readonly TypedWord[] {
  return items.flatMap(({ entry }) => {
    const value = entry.kind === 'map' ? valueAt(entry, 'word') : entry
    return value?.kind === 'text' ? [{ text: straightened(value.text), place: value.place }] : []
  })
}

function repeated(words: readonly TypedWord[]): readonly Problem[] {
  return repetitions(words, ({ text }) => sameWord(text)).map(({ item, earlier, lines }) => {
    const spelled = earlier.text === item.text ? '' : `, as "${earlier.text}" and "${item.text}"`
    const { file } = earlier.place
    if (file !== item.place.file)
      return warningAt(
        item.place,
        `"${item.text}" stands in ${file} too: it is taken once, as it stands there`,
        'Nothing has to be done; take it out of one of the files if it is to stand there no more.',
      )
    return errorAt(item.place, `"${item.text}" stands twice${lines}${spelled}`, 'Take one of the two out.')
  })
}
