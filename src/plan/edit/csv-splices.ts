/** Changes of a list in a spreadsheet's file: a cell is written anew, the others keep their signs. */
import { foldName } from '../values/fold-name.js'
import { type CsvTable, csvTable } from '../words/csv-list.js'
import { type CsvRow, delimiterOf } from '../words/csv-rows.js'
import { keysOfWord } from '../words/word-entry.js'
import { linesAt, type Splice } from './lines.js'
import { isKeys } from './plan-data.js'
import type { PlanData, PlanEdit } from './plan-edit.js'

/** Undefined where a row cannot hold it. */
export function csvSplices(name: string, text: string, edit: PlanEdit): readonly Splice[] | undefined {
  const read = csvTable(name, text, keysOfWord())
  if (!read.ok) return undefined
  const sheet: Sheet = { text, table: read.value, sign: delimiterOf(text).delimiter }
  switch (edit.kind) {
    case 'set':
    case 'remove':
      return inRow(sheet, edit)
    case 'insert':
      return edit.path.length === 1 ? insertRows(sheet, edit.at, edit.values) : undefined
    case 'move':
      return edit.path.length === 1 ? moveRow(sheet, edit.from, edit.to) : undefined
  }
}

interface Sheet {
  readonly text: string
  readonly table: CsvTable
  /** Between cells. */
  readonly sign: string
}

function inRow(sheet: Sheet, edit: Extract<PlanEdit, { readonly kind: 'set' | 'remove' }>) {
  const [, index, key = 'word', ...more] = edit.path
  const row = typeof index === 'number' ? sheet.table.body[index] : undefined
  if (row === undefined || typeof key !== 'string' || more.length > 0) return undefined
  if (edit.kind === 'remove' && edit.path.length === 2)
    return [{ start: row.start, end: row.start + row.written.length, put: '' }]
  const value = edit.kind === 'remove' ? '' : edit.value
  if (typeof value !== 'string') return undefined
  const column = columnOf(sheet, key)
  if (column !== undefined) return cellSplices(sheet, row, column, value)
  const { header } = sheet.table
  if (header === undefined) return undefined
  const width = header.cells.length
  return [
    ...cellSplices(sheet, header, width, foldName(key).replaceAll('-', ' ')),
    ...cellSplices(sheet, row, width, value),
  ]
}

function columnOf({ table }: Sheet, key: string): number | undefined {
  const at = table.keys.findIndex(each => each !== undefined && foldName(each) === foldName(key))
  return at < 0 ? undefined : at
}

/** A row that ends before the column is filled up to it. */
function cellSplices({ text, sign }: Sheet, row: CsvRow, column: number, value: string): readonly Splice[] {
  const cells = cellsOf(row, sign)
  const cell = cells[column]
  const put = cellWritten(value, sign)
  if (cell !== undefined) {
    const wasQuoted = text.startsWith('"', cell.start)
    return [{ ...cell, put: wasQuoted && !put.startsWith('"') && put !== '' ? `"${put}"` : put }]
  }
  const end = cells.at(-1)!.end
  return [{ start: end, end, put: `${sign.repeat(column - cells.length + 1)}${put}` }]
}

/** Where the cells of a row that is whole begin and end. */
function cellsOf(
  { start, written }: CsvRow,
  sign: string,
): readonly { readonly start: number; readonly end: number }[] {
  const row = written.replace(/\n$/, '')
  const cells: { start: number; end: number }[] = []
  let [from, isQuoted] = [0, false]
  for (let at = 0; at <= row.length; at += 1) {
    if (row[at] === '"') isQuoted = !isQuoted
    if (at < row.length && (isQuoted || row[at] !== sign)) continue
    cells.push({ start: start + from, end: start + at })
    from = at + 1
  }
  return cells
}

function cellWritten(value: string, sign: string): string {
  return value.includes(sign) || /["\n]/.test(value) ? `"${value.replaceAll('"', '""')}"` : value
}

function insertRows(sheet: Sheet, at: number, values: readonly PlanData[]): readonly Splice[] | undefined {
  const { text, table, sign } = sheet
  const rows = values.map(value => fieldsOf(value))
  const keys = [...new Set(rows.flatMap(row => row?.map(([key]) => key) ?? []))]
  const fresh = keys.filter(key => columnOf(sheet, key) === undefined)
  if (rows.includes(undefined) || (fresh.length > 0 && table.header === undefined)) return undefined
  const width = table.header?.cells.length ?? table.keys.length
  const columnFor = (key: string) => columnOf(sheet, key) ?? width + fresh.indexOf(key)
  const lines = rows.map(fields => {
    const cells = Array.from({ length: width + fresh.length }, () => '')
    for (const [key, value] of fields ?? []) cells[columnFor(key)] = cellWritten(value, sign)
    return cells.join(sign)
  })
  const [next, last] = [table.body[at], table.body.at(-1) ?? table.header]
  const place = next?.start ?? (last === undefined ? text.length : last.start + last.written.length)
  const heads = fresh.map(key => `${sign}${cellWritten(key, sign)}`).join('')
  const end = table.header === undefined ? 0 : cellsOf(table.header, sign).at(-1)!.end
  return [...(heads === '' ? [] : [{ start: end, end, put: heads }]), linesAt(text, place, 0, lines)]
}

function fieldsOf(value: PlanData): readonly (readonly [string, string])[] | undefined {
  if (typeof value === 'string') return [['word', value]]
  if (!isKeys(value)) return undefined
  const fields = Object.entries(value).flatMap(([key, each]) =>
    typeof each === 'string' ? [[key, each] as const] : [],
  )
  return fields.length === Object.keys(value).length ? fields : undefined
}

function moveRow({ text, table }: Sheet, from: number, to: number): readonly Splice[] | undefined {
  const [row, beside] = [table.body[from], table.body[to]]
  if (row === undefined || beside === undefined) return undefined
  const at = to > from ? beside.start + beside.written.length : beside.start
  const lines = [row.written.replace(/\n$/, '')]
  return [{ start: row.start, end: row.start + row.written.length, put: '' }, linesAt(text, at, 0, lines)]
}
