/** Lists of words: in a plan, or in a .txt or .csv file; for `make` and for `study --file` alike. */
import { dirname, isAbsolute, join } from 'node:path'
import { errorAt, type Outcome, type Place, type Problem } from '../problems.js'
import { csvEntries } from './csv-list.js'
import { type Entry, misfit } from './entry.js'
import type { FileAccess } from './file-access.js'
import { valueAt } from './keys.js'
import { andThen, fail, inReadingOrder, outcomeOf, succeed, together } from './outcomes.js'
import { plainListEntries } from './plain-list.js'
import type { PlanWord } from './plan.js'
import { repetitions } from './repetitions.js'
import { readTextFile } from './text-file.js'
import { readWord, type WordContext } from './word-entry.js'
import { sameWord, straightened } from './word-text.js'

const form = 'Write a dash and a word on each line, or the path of a .txt or .csv file.'

export interface WordEntries {
  readonly items: readonly Entry[]
  /** The file that the entries stand in. */
  readonly file: string
}

/** The entries of a list, or of the file that it names, relative to the file that names it. */
export function wordEntries(entry: Entry, context: WordContext): Outcome<WordEntries> {
  if (entry.kind === 'list') return succeed({ items: entry.items, file: context.file })
  if (entry.kind !== 'text') return misfit(entry, 'a list of words', form)
  if (!/\.(?:txt|csv)$/i.test(entry.text)) {
    return fail(
      errorAt(entry.place, `"${entry.text}" is neither a list of words nor a .txt or .csv file`, form),
    )
  }
  const path = isAbsolute(entry.text) ? entry.text : join(dirname(context.file), entry.text)
  return entriesOfFile(path, entry.place, context.files)
}

function entriesOfFile(path: string, place: Place, files: FileAccess): Outcome<WordEntries> {
  const text = readTextFile({ path, what: 'the word list', place }, files)
  const read = andThen(text, content =>
    /\.csv$/i.test(path) ? csvEntries(path, content) : succeed(plainListEntries(path, content)),
  )
  return andThen(read, items => {
    if (items.length > 0) return succeed({ items, file: path })
    return fail(errorAt({ file: path }, 'the word list holds no word', 'Write a word on each line.'))
  })
}

/** The words, each once; every problem of every word. */
export function readWords(entries: WordEntries, context: WordContext): Outcome<readonly PlanWord[]> {
  const words = together(entries.items.map(item => readWord(item, { ...context, file: entries.file })))
  const problems = [...words.problems, ...repeated(typedWords(entries))]
  return words.ok ? outcomeOf(words.value, problems) : { ok: false, problems }
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
  return items.flatMap(item => {
    const value = item.kind === 'map' ? valueAt(item, 'word') : item
    return value?.kind === 'text' ? [{ text: straightened(value.text), place: value.place }] : []
  })
}

function repeated(words: readonly TypedWord[]): readonly Problem[] {
  return repetitions(words, ({ text }) => sameWord(text)).map(({ item, earlier, lines }) => {
    const spelled = earlier.text === item.text ? '' : `, as "${earlier.text}" and "${item.text}"`
    return errorAt(item.place, `"${item.text}" stands twice${lines}${spelled}`, 'Take one of the two out.')
  })
}

export interface WordListFile {
  readonly path: string
  readonly files: FileAccess
  /** The patterns that the columns `not` and `also` of a .csv file may name. */
  readonly patterns: readonly string[]
}

/** A word list on its own, a .csv with a header row or else a word a line; problems carry their lines. */
export function readWordListFile({ path, files, patterns }: WordListFile): Outcome<readonly PlanWord[]> {
  const context = { patterns, files, file: path }
  const words = andThen(entriesOfFile(path, { file: path }, files), entries => readWords(entries, context))
  return { ...words, problems: inReadingOrder(words.problems, path) }
}
