/** Rows of a .csv file → entries: a row of names says what the columns hold, an empty cell is a key left out. */
import { andThen, fail, outcomeOf, succeed } from '../../outcomes.js'
import { errorAt, type Outcome, type Problem, warningAt } from '../../problems.js'
import { foldName } from '../values/fold-name.js'
import { nearestAdvice } from '../values/nearest.js'
import type { Entry, Pair } from '../yaml/entry.js'
import { type CsvRow, csvRows } from './csv-rows.js'
import { isWord } from './word-text.js'

/** What teachers call a column, beside the key itself. */
const columnNames: Readonly<Record<string, readonly string[]>> = {
  word: ['words', 'spelling', 'spellings', 'spelling word', 'spelling words', 'word list'],
  clue: ['clues', 'meaning', 'definition'],
  sentence: ['sentences', 'example', 'example sentence'],
  picture: ['pictures', 'image'],
  'part of speech': ['parts of speech', 'word class'],
  plural: ['plurals', 'plural form'],
}

export interface CsvTable {
  /** For each column the key of a word that it holds; undefined where it is none. */
  readonly keys: readonly (string | undefined)[]
  readonly header: CsvRow | undefined
  readonly body: readonly CsvRow[]
  readonly problems: readonly Problem[]
}

/** @param wordKeys the keys that a word has */
export function csvEntries(
  file: string,
  text: string,
  wordKeys: readonly string[],
): Outcome<readonly Entry[]> {
  return andThen(csvTable(file, text, wordKeys), table => {
    const { body, header, problems } = table
    return outcomeOf(
      body.map(row => rowEntry(row, table)),
      [...problems, ...(header === undefined ? [] : body.flatMap(row => tooManyCells(row, header)))],
    )
  })
}

/** Which of its columns hold what, and its rows. */
export function csvTable(file: string, text: string, wordKeys: readonly string[]): Outcome<CsvTable> {
  return andThen(csvRows(file, text), rows => {
    const [first] = rows
    if (first === undefined) return succeed({ keys: ['word'], header: undefined, body: [], problems: [] })
    const table = withHeader(rows, wordKeys) ?? withoutHeader(rows)
    if (table !== undefined) return succeed(table)
    const advice = 'Begin the file with a row of column names, one of them "word": word,clue.'
    return fail(errorAt(first.place, 'no column of the first row is called "word"', advice))
  })
}

/** Rows above the names of the columns, such as the title of the list. */
const MOST_ABOVE = 3

/** The rows below the first one that names a column of words. */
function withHeader(rows: readonly CsvRow[], wordKeys: readonly string[]): CsvTable | undefined {
  const at = rows
    .slice(0, MOST_ABOVE + 1)
    .findIndex(({ cells }) => cells.some(cell => keyOf(cell, wordKeys) === 'word'))
  const header = rows[at]
  if (header === undefined) return undefined
  const keys = header.cells.map(cell => keyOf(cell, wordKeys))
  const unknown = header.cells.filter((cell, index) => keys[index] === undefined && cell.trim() !== '')
  return {
    keys,
    header,
    body: rows.slice(at + 1),
    problems: unknown.map(name =>
      warningAt(
        header.place,
        `the column "${name.trim()}" is not read`,
        nearestAdvice({ name: name.trim(), known: wordKeys, where: `A word has ${wordKeys.join(', ')}.` }),
      ),
    ),
  }
}

/** A list as it comes out of a spreadsheet without names: words in the first column, below a title perhaps. */
function withoutHeader(rows: readonly CsvRow[]): CsvTable | undefined {
  const startsWithWord = ({ cells: [first = ''] }: CsvRow) => isWord(first.trim())
  const at = rows.findIndex(startsWithWord)
  const body = rows.slice(at)
  if (at < 0 || at > MOST_ABOVE || !body.every(startsWithWord)) return undefined
  const columns = Math.max(...body.map(({ cells }) => cells.filter(cell => cell.trim() !== '').length))
  const others = columns > 1 ? ', and the others are left out' : ''
  const warning = warningAt(
    rows[at]!.place,
    `the file has no row of column names: its first column is read as words${others}`,
    'Begin the file with a row of names, such as word,clue.',
  )
  return { keys: ['word'], header: undefined, body, problems: [warning] }
}

function keyOf(cell: string, wordKeys: readonly string[]): string | undefined {
  const name = foldName(cell)
  return wordKeys.find(key => [key, ...(columnNames[key] ?? [])].some(known => foldName(known) === name))
}

function rowEntry({ cells, place }: CsvRow, { keys, header }: CsvTable): Entry {
  const pairs = keys.flatMap((key, index): readonly Pair[] => {
    const text = (cells[index] ?? '').normalize('NFC').trim()
    if (text === '' || key === undefined) return []
    const typed = header?.cells[index]?.trim() ?? key
    // A problem names the column as she does, where a word's keys know it by that name.
    const name = foldName(typed) === foldName(key) ? typed : key
    return [{ key: name, keyPlace: header?.place ?? place, value: { kind: 'text', text, place } }]
  })
  return { kind: 'map', place, pairs }
}

function tooManyCells({ cells, place }: CsvRow, header: CsvRow): readonly Problem[] {
  const extra = cells.slice(header.cells.length).filter(cell => cell.trim() !== '')
  if (extra.length === 0) return []
  const message = `the row has ${cells.length} cells, the row of names has ${header.cells.length}`
  return [errorAt(place, message, 'Put a text that holds a comma in double quotes: "wet, grassy land".')]
}
