/** What is wrong with the rows of tables: their fields, words that stand twice, the order. */
import { errorAt, type Problem } from '../../problems.js'
import type { Row, Table } from './table-text.js'

export function checkTable(table: Table): readonly Problem[] {
  return [...table.rows.flatMap(row => problemsInRow(table, row)), ...problemsOfOrder(table)]
}

function problemsInRow({ file, columns }: Table, { line, fields }: Row): readonly Problem[] {
  const place = { file, line }
  if (fields.length !== columns.length) {
    const names = columns.map(({ name }) => name).join(', ')
    const message = `This line has ${fields.length} ${fields.length === 1 ? 'field' : 'fields'}, not ${columns.length}`
    return [errorAt(place, message, `Write with one tab between them: ${names}.`)]
  }
  return columns.flatMap(({ name, problemWith }, index) => {
    const field = fields[index]!
    const problem = problemWith(field)
    if (problem === undefined) return []
    const message = `The ${name} "${field}"${problem.what.startsWith(':') ? '' : ' '}${problem.what}`
    return [errorAt(place, message, problem.advice)]
  })
}

function keyOf(table: Table, row: Row): string {
  const [first = ''] = row.fields
  return table.columns[0]?.keyOf(first) ?? first
}

function problemsOfOrder(table: Table): readonly Problem[] {
  const { file, order, rows } = table
  const severalLines = order === 'alphabetical, a word may have several lines'
  const lines = new Map<string, number>()
  const problems: Problem[] = []
  let last = ''
  for (const row of rows) {
    const [word, key] = [row.fields[0]!, keyOf(table, row)]
    const identity = severalLines ? row.fields.join('\t') : key
    const earlier = lines.get(identity)
    if (earlier !== undefined) {
      const advice = 'Leave one of them, with all that is to be said of the word.'
      problems.push(errorAt({ file, line: row.line }, `"${word}" stands in line ${earlier} already`, advice))
    } else if (order !== 'as it stands' && key < last) {
      const after = rows.find(other => keyOf(table, other) > key)!
      const advice = `Move it up, before "${after.fields[0]}" in line ${after.line}.`
      problems.push(
        errorAt({ file, line: row.line }, `"${word}" is out of the order of the alphabet`, advice),
      )
    } else last = key
    lines.set(identity, earlier ?? row.line)
  }
  return problems
}

/** A word that stands in two of the tables that their heads keep apart. */
export function checkAcross(tables: readonly Table[]): readonly Problem[] {
  const patterns = new Set(
    tables.flatMap(({ file, onceIn }) => (onceIn === undefined ? [] : [inFolderOf(file, onceIn)])),
  )
  return [...patterns].flatMap(pattern => {
    const [before = '', after = ''] = pattern.split('*')
    const family = tables.filter(({ file }) => file.startsWith(before) && file.endsWith(after))
    const places = new Map<string, string>()
    return family.flatMap(table =>
      table.rows.flatMap(row => {
        const key = keyOf(table, row)
        const earlier = places.get(key)
        places.set(key, earlier ?? `${table.file}:${row.line}`)
        if (earlier === undefined || earlier.startsWith(`${table.file}:`)) return []
        const message = `"${row.fields[0]}" stands at ${earlier} already`
        return [errorAt({ file: table.file, line: row.line }, message, 'Leave the better of the two.')]
      }),
    )
  })
}

function inFolderOf(file: string, name: string): string {
  return file.slice(0, file.lastIndexOf('/') + 1) + name
}
