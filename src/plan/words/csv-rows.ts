/** The rows of a .csv file, as a spreadsheet writes them. */
import { CsvError, parse } from 'csv-parse/sync'
import { fail, outcomeOf } from '../../outcomes.js'
import { errorAt, type Outcome, type Place, type Problem } from '../../problems.js'

export interface CsvRow {
  readonly cells: readonly string[]
  /** Where the row begins. */
  readonly place: Place
  /** Where it begins in the text, and what stands there up to the next row. */
  readonly start: number
  readonly written: string
}

/** The rows of a .csv file that are not empty. */
export function csvRows(file: string, text: string): Outcome<readonly CsvRow[]> {
  const { delimiter, from } = delimiterOf(text)
  try {
    const records = parse(text, {
      bom: true,
      delimiter,
      info: true,
      raw: true,
      from_line: from,
      relax_column_count: true,
    }) as unknown as {
      record: string[]
      info: { lines: number }
      raw: string
    }[]
    let next = from === 1 ? 0 : text.indexOf('\n') + 1
    const all = records.map(({ record, info, raw }) => {
      const breaksInside = record.reduce((sum, cell) => sum + cell.split('\n').length - 1, 0)
      const start = next
      next += raw.length
      return { cells: record, place: { file, line: info.lines - breaksInside }, start, written: raw }
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

/** The sign between cells: the one that `sep=` names on the first line, as spreadsheets have it, or that the first rows hold. */
export function delimiterOf(text: string): { readonly delimiter: string; readonly from: number } {
  const named = /^\uFEFF?"?sep=(.)"?[^\S\n]*(?:\n|$)/i.exec(text)?.[1]
  if (named !== undefined) return { delimiter: named, from: 2 }
  const first = text.trimStart().split('\n', FIRST_ROWS).join('\n')
  return { delimiter: [',', ';', '\t'].find(sign => first.includes(sign)) ?? ',', from: 1 }
}

/** A title may stand above the names of the columns. */
const FIRST_ROWS = 4
