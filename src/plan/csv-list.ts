/** Rows of a .csv file → entries: the header row names the keys, an empty cell is a key left out. */
import { CsvError, parse } from 'csv-parse/sync'
import { errorAt, type Outcome, type Place, type Problem } from '../problems.js'
import type { Entry, Pair } from './entry.js'
import { foldName } from './names.js'
import { fail, outcomeOf } from './outcomes.js'

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
  const firstLine = text.slice(0, text.indexOf('\n') >>> 0)
  const delimiter = [',', ';', '\t'].find(sign => firstLine.includes(sign)) ?? ','
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
    const line = typeof error.lines === 'number' ? { line: error.lines } : {}
    const advice = 'Put a text that holds a double quote in double quotes, and write the inner one twice.'
    return fail(
      errorAt({ file, ...line }, 'a double quote in this row is not closed, or stands inside a cell', advice),
    )
  }
}
