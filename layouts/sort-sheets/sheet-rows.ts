/** What stands on a sheet of a sort from top to bottom, and how high each part is. */
import type { Size } from '../../src/geometry.js'
import { balancedLines } from '../../src/pieces/text/balanced-lines.js'
import { linesHeight } from '../../src/pieces/text/break-lines.js'
import type { TypeScale } from '../../src/pieces/text/type-scale.js'
import type { SortHeading } from '../../src/sets/sorts/sort-heading.js'
import { BESIDE_LINES_MM, leastWriting, mostWriting } from '../writing/writing-lines.js'
import type { SortRequest } from './chosen-headings.js'

/** A sheet with a column under each heading. */
export interface SortSheet {
  readonly headings: readonly SortHeading[]
  /** Lines to write on in each column; none leaves them empty, to lay or glue cards in. */
  readonly linesEach: number
  /** Whether the child writes her name above them. */
  readonly named: boolean
  /** What she is asked below them, each with lines to write on. */
  readonly asked: readonly Asked[]
}

export interface Asked {
  readonly text: string
  readonly lines: number
}

/** White between the columns and the set mark below them. */
const ABOVE_MARK_MM = 1.2
export interface RowPlan {
  readonly room: Size
  readonly headMm: number
  readonly columns: number
  /** Above the columns. */
  readonly nameMm: number
  /** Of the columns' part below the headings. */
  readonly bodyMm: number
  /** From line to line. */
  readonly lineMm: number
  readonly textMm: number
  readonly asked: readonly { readonly lines: readonly string[]; readonly writing: number }[]
}

/** A child's sentence on a sheet to write on: larger than a grown-up's, smaller than her words. */
function askedSize(type: TypeScale): number {
  return Math.max(type.textMm, type.listTextMm * 0.8)
}

export function planRows(
  { type, measure }: SortRequest,
  { headings, linesEach, named, asked }: SortSheet,
  { room, headMm }: { readonly room: Size; readonly headMm: number },
): RowPlan {
  const textMm = askedSize(type)
  const told = asked.map(({ text, lines }) => ({
    lines: balancedLines(text, room.widthMm - 2 * BESIDE_LINES_MM, { sizeMm: textMm }, measure),
    writing: lines,
  }))
  const writing = told.reduce((sum, each) => sum + each.writing, 0)
  const textsMm = told.reduce((sum, { lines }) => sum + linesHeight(lines.length, textMm) + textMm * 0.5, 0)
  const nameMm = named ? linesHeight(1, textMm) * 1.5 : 0
  const heightMm = room.heightMm - ABOVE_MARK_MM - headMm - textsMm - nameMm
  const lineMm = Math.min(mostWriting(leastWriting(type)), heightMm / (linesEach + writing + 0.4))
  const bodyMm = linesEach === 0 ? heightMm - writing * lineMm : (linesEach + 0.4) * lineMm
  return { room, headMm, columns: headings.length, nameMm, bodyMm, lineMm, textMm, asked: told }
}
