/** Where a list of words stands: in a plan, or in a .txt or .csv file; for `make` and for `study --file` alike. */
import { dirname, isAbsolute, join } from 'node:path'
import { andThen, fail, inReadingOrder, succeed, together } from '../../outcomes.js'
import { errorAt, type Outcome, type Place } from '../../problems.js'
import type { FileAccess } from '../disk/file-access.js'
import { readTextFile } from '../disk/text-file.js'
import type { Takes } from '../keys/takes.js'
import { isTooMany } from '../most-entries.js'
import type { PlanWord } from '../plan.js'
import { type Entry, misfit, type TextEntry } from '../yaml/entry.js'
import { csvEntries } from './csv-list.js'
import { readWords, type WordEntries } from './list-words.js'
import { plainListEntries } from './plain-list.js'
import { keysOfWord, type WordContext, wordTaken } from './word-entry.js'
import { isWord } from './word-text.js'

const form = 'Write a dash and a word on each line, or the path of a .txt or .csv file.'

/** A list of words, or the path of one. */
export function wordListTaken(context: WordContext, { empty }: { readonly empty: boolean }): Takes {
  const path: Takes = {
    kind: 'form',
    what: 'the path of a .txt or .csv file',
    samples: ['words.txt'],
    pattern: String.raw`\.(?:txt|csv)$`,
  }
  const word = wordTaken(context)
  const inner: Takes = { kind: 'list', of: word, alone: false, empty: false }
  const of: Takes = { kind: 'any of', ways: [...(word.kind === 'any of' ? word.ways : [word]), path, inner] }
  return { kind: 'any of', ways: [{ kind: 'list', of, alone: false, empty }, path] }
}

/** The entries of a list with those of lists and files in it, or of the file that it names, relative to the file that names it. */
export function wordEntries(entry: Entry, context: WordContext): Outcome<WordEntries> {
  if (entry.kind === 'list') {
    return andThen(together(partsOf(entry.items, context)), found =>
      succeed({ items: found.flatMap(({ items }) => items), file: context.file }),
    )
  }
  if (entry.kind !== 'text') return misfit(entry, 'a list of words', form)
  const several = entry.text.split(/[\s,;]+/).filter(word => word !== '')
  if (several.length > 1 && several.every(isWord)) {
    const shown = several.length > 6 ? `${several.slice(0, 6).join(', ')}, …` : several.join(', ')
    const advice = `Put brackets round them: [${shown}]; or write a dash and a word on each line.`
    return fail(errorAt(entry.place, 'these words are a list without its brackets', advice))
  }
  if (!/\.(?:txt|csv)$/i.test(entry.text)) {
    return fail(
      errorAt(entry.place, `"${entry.text}" is neither a list of words nor a .txt or .csv file`, form),
    )
  }
  return entriesOfNamedFile(entry, context)
}

/** More than can be meant is refused as a whole: files beyond that are not opened. */
function partsOf(items: readonly Entry[], context: WordContext): readonly Outcome<WordEntries>[] {
  const parts: Outcome<WordEntries>[] = []
  let words = 0
  for (const item of items) {
    if (isTooMany('words', words) && namesFile(item)) continue
    const part = entriesInList(item, context)
    words += part.ok ? part.value.items.length : 1
    parts.push(part)
  }
  return parts
}

/** A word with its keys, the path of another list, or a list in the list. */
function entriesInList(item: Entry, context: WordContext): Outcome<WordEntries> {
  if (item.kind === 'list') return wordEntries(item, context)
  if (namesFile(item)) return entriesOfNamedFile(item, context)
  return succeed({ items: [{ entry: item, file: context.file }], file: context.file })
}

function namesFile(item: Entry): item is TextEntry {
  return item.kind === 'text' && /\.(?:txt|csv)$/i.test(item.text)
}

function entriesOfNamedFile({ text, place }: TextEntry, context: WordContext): Outcome<WordEntries> {
  const path = isAbsolute(text) ? text : join(dirname(context.file), text)
  return entriesOfFile(path, place, context.files)
}

function entriesOfFile(path: string, place: Place, files: FileAccess): Outcome<WordEntries> {
  const text = readTextFile({ path, what: 'the word list', place }, files)
  const read = andThen(text, content =>
    /\.csv$/i.test(path) ? csvEntries(path, content, keysOfWord()) : succeed(plainListEntries(path, content)),
  )
  return andThen(read, items => {
    if (items.length > 0) return succeed({ items: items.map(entry => ({ entry, file: path })), file: path })
    return fail(errorAt({ file: path }, 'the word list holds no word', 'Write a word on each line.'))
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

/** What such a file holds as it is written there, before it means anything. */
export function wordListFileEntries(path: string, files: FileAccess): Outcome<readonly Entry[]> {
  const entries = entriesOfFile(path, { file: path }, files)
  return andThen(entries, ({ items }) => succeed(items.map(({ entry }) => entry)))
}
