/** Rows of a .csv file → entries: the header row names the keys, an empty cell is a key left out. */
import { CsvError, parse } from 'csv-parse/sync'
import { fail, outcomeOf } from '../../outcomes.js'
import { errorAt, type Outcome, type Place, type Problem } from '../../problems.js'
import { foldName } from '../values/fold-name.js'
import type { Entry, Pair } from '../yaml/entry.js'

interface Row {
  readonly cells: readonly string[]
  /** Where the row begins. */
  readonly place: Place
}

export function csvEntries(file: string, text: string): Outcome<readonly Entry[]> {
  const parsed = rows(file, text)
  if (!parsed.ok) return parsed
  const [header, ...body] = parsed.value
  if (!header) return outcomeOf([], [])
  if (!header.cells.some(cell => foldName(cell) === 'word')) {
    const advice = 'Begin the file with a row of column names, one of them "word": word,clue.'
    return fail(errorAt(header.place, 'no column of the first row is called "word"', advice))
  }
  const problems = body.flatMap(row => tooManyCells(row, header))
  return outcomeOf(
    body.map(row => rowEntry(row, header)),
    problems,
  )
}

function rowEntry({ cells, place }: Row, header: Row): Entry {
  const pairs = header.cells.flatMap((name, index): readonly Pair[] => {
    const text = (cells[index] ?? '').normalize('NFC').trim()
    if (text === '') return []
    return [{ key: name.trim(), keyPlace: header.place, value: { kind: 'text', text, place } }]
  })
  return { kind: 'map', place, pairs }
}

function tooManyCells({ cells, place }: Row, header: Row): readonly Problem[] {
  const extra = cells.slice(header.cells.length).filter(cell => cell.trim() !== '')
  if (extra.length === 0) return []
  const message = `the row has ${cells.length} cells, the first row has ${header.cells.length}`
  return [errorAt(place, message, 'Put a text that holds a comma in double quotes: "wet, grassy land".')]
}

function rows(file: string, text: string): Outcome<readonly Row[]> {
  // A spreadsheet writes what its country divides by.
  const [header = ''] = text.trimStart().split('\n', 1)
  const delimiter = [',', ';', '\t'].find(sign => header.includes(sign)) ?? ','
  try {
    const records = parse(text, {
      bom: true,
      delimiter,
      info: true,
      relax_column_count: true,
    }) as unknown as {
      record: string[]
      info: { lines: number }
    }[]
    const all = records.map(({ record, info }) => {
      const breaksInside = record.reduce((sum, cell) => sum + cell.split('\n').length - 1, 0)
      return { cells: record, place: { file, line: info.lines - breaksInside } }
    })
    return outcomeOf(
      all.filter(({ cells }) => cells.some(cell => cell.trim() !== '')),
      [],
    )
  } catch (error) {
    if (!(error instanceof CsvError)) throw error
    return fail(brokenRow(file, text, error))
  }
}

function brokenRow(file: string, text: string, error: CsvError): Problem {
  const unclosed = error.code === 'CSV_QUOTE_NOT_CLOSED'
  // An open quote is noticed at the end of the text; the teacher looks behind the last row that was whole.
  const whole = Buffer.from(text).subarray(0, Number(error.bytes_records) || 0)
  const line = unclosed ? whole.toString().split('\n').length : Number(error.lines) || 1
  const message = unclosed
    ? 'a double quote in this row is never closed'
    : 'a double quote stands inside a cell'
  const advice =
    'Put the whole cell in double quotes, and write a double quote inside it twice: "a 6"" reed".'
  return errorAt({ file, line }, message, advice)
}
