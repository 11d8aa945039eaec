/**
 * A table of words as it lies beside the code that reads it: plain text that a teacher or a linguist can mend.
 *
 * Its head is lines that begin with #. The first say what it holds; then come three that the build reads as well:
 *
 *   # Source: where the lines come from
 *   # Columns: singular (word) | plurals (words)       each column's name and kind; columns.ts has the kinds
 *   # Order: alphabetical
 *
 * Then a row a line, its fields parted by tabs.
 */
import { outcomeOf } from '../../outcomes.js'
import { errorAt, type Outcome, type Problem } from '../../problems.js'
import { type Column, columnKinds, readColumn } from './columns.js'

/** Several lines of one word keep their order; `as it stands` is for rows whose order says something. */
export const orders = ['alphabetical', 'alphabetical, a word may have several lines', 'as it stands'] as const
export type Order = (typeof orders)[number]

export interface Row {
  /** From 1. */
  readonly line: number
  readonly fields: readonly string[]
}

export interface Table {
  readonly file: string
  readonly columns: readonly Column[]
  readonly order: Order
  /** The tables in which, with this one, a word may stand once: a name with * for any letters. */
  readonly onceIn: string | undefined
  readonly rows: readonly Row[]
}

const headLines = {
  Source: 'Write where its lines come from, or "# Source: common practice, no source".',
  Columns: 'Write each column with its kind, as in "# Columns: word (word) | draft (text)".',
  Order: `Write one of: ${orders.join('; ')}.`,
} as const

/** The table without a look at its fields; check-table.ts has that. */
export function readTable(file: string, text: string): Outcome<Table> {
  const lines = text.replaceAll('\r\n', '\n').split('\n')
  const head = readHead(lines)
  const missing = (['Source', 'Columns', 'Order'] as const)
    .filter(name => !head.get(name)?.text)
    .map(name => errorAt({ file }, `The head has no line "# ${name}: …"`, headLines[name]))
  const columns = columnsOf(file, head.get('Columns'))
  const order = orders.find(each => each === head.get('Order')?.text)
  const problems = [
    ...(lines[0]?.startsWith('#') && !/^# \w+:/.test(lines[0])
      ? []
      : [errorAt({ file, line: 1 }, 'The head does not say what the table holds', headAdvice)]),
    ...missing,
    ...columns.problems,
    ...(order !== undefined || !head.get('Order')?.text
      ? []
      : [errorAt({ file, line: head.get('Order')!.line }, 'This order is not known', headLines.Order)]),
  ]
  const rows = lines.flatMap((line, index) =>
    line === '' || line.startsWith('#') ? [] : [{ line: index + 1, fields: line.split('\t') }],
  )
  const onceIn = head.get('Once in')?.text
  return outcomeOf({ file, columns: columns.columns, order: order ?? 'as it stands', onceIn, rows }, problems)
}

const headAdvice = 'Begin the file with a line "# …" that tells a reader what its rows say.'

interface HeadLine {
  readonly line: number
  readonly text: string
}

function readHead(lines: readonly string[]): ReadonlyMap<string, HeadLine> {
  const head = new Map<string, HeadLine>()
  for (const [index, line] of lines.entries()) {
    if (!line.startsWith('#')) break
    const [, name, text] = /^# (Source|Columns|Order|Once in): *(.*?) *$/.exec(line) ?? []
    if (name !== undefined && text !== undefined) head.set(name, { line: index + 1, text })
  }
  return head
}

function columnsOf(
  file: string,
  head: HeadLine | undefined,
): { readonly columns: readonly Column[]; readonly problems: readonly Problem[] } {
  if (head === undefined || head.text === '') return { columns: [], problems: [] }
  const written = head.text.split(' | ')
  const columns = written.map(readColumn)
  const problems = written
    .filter((_, index) => columns[index] === undefined)
    .map(column =>
      errorAt(
        { file, line: head.line },
        `The column "${column}" has no kind that is known`,
        `Write a name and in brackets one of: ${columnKinds.join(', ')}.`,
      ),
    )
  return { columns: columns.filter(column => column !== undefined), problems }
}
