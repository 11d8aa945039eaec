/** Which cells of a board stand on a sheet of it, and how large they are. */
import type { Size } from '../../src/geometry.js'
import type { ArtSlot } from '../../src/pieces/faces/face.js'
import { contentRoom } from '../../src/pieces/parts/card-frame.js'
import type { Card } from '../../src/sets/card-set.js'
import type { Word } from '../../src/words/word.js'
import { besideStrips, joinedSheets, placeOfSheet } from '../joined-sheets/joined-sheets.js'
import type { LayoutRequest } from '../layout.js'

/** Heads of the columns of a grid, or of its rows; drawn to measure. */
export interface GridHeads {
  readonly at: 'top' | 'side'
  readonly heads: readonly ArtSlot['draw'][]
  /** Height of the heads at the top, or their width at the side. */
  readonly sizeMm: number
}

/** White between the board's lines and the set mark below them. */
export const ABOVE_MARK_MM = 1.2

export interface CellsOnSheet {
  /** Rows of them. */
  readonly cells: readonly (readonly (Word | null)[])[]
  /** Of one of them; on a board of a single sheet a little less than this is left of it beside the board's frame. */
  readonly cell: Size
  /** Of the sheet, for what the board shows. */
  readonly room: Size
  /** With the strips on which the next sheets are glued. */
  readonly whole: Size
  /** Those of the heads that stand on this sheet; undefined where none do. */
  readonly heads: GridHeads | undefined
}

/** All sheets of a board have cells of one size; where they cannot be shared out evenly, the last sheets have fewer. */
export function cellsOnSheet(
  { type }: Pick<LayoutRequest, 'type'>,
  { card, size, heads }: { readonly card: Card; readonly size: Size; readonly heads?: GridHeads | undefined },
): CellsOnSheet {
  const all = card.cells!
  const [columns, rows] = [all[0]!.length, all.length]
  const inside = contentRoom(size, undefined, type)
  const whole = { ...inside, heightMm: inside.heightMm - ABOVE_MARK_MM }
  if (card.part === undefined) {
    const cell = { widthMm: size.widthMm / columns, heightMm: size.heightMm / rows }
    return { cells: all, cell, room: whole, whole, heads }
  }
  const sheets = joinedSheets(card.part.of)
  const room = besideStrips(whole, sheets)
  const [columnsEach, rowsEach] = [Math.ceil(columns / sheets.across), Math.ceil(rows / sheets.down)]
  const { column, row } = placeOfSheet(card.part.number, sheets)
  const [top, left] = [row * rowsEach, column * columnsEach]
  const cell = {
    widthMm: (room.widthMm - (heads?.at === 'side' ? heads.sizeMm : 0)) / columnsEach,
    heightMm: (room.heightMm - (heads?.at === 'top' ? heads.sizeMm : 0)) / rowsEach,
  }
  const cells = all.slice(top, top + rowsEach).map(each => each.slice(left, left + columnsEach))
  return { cells, cell, room, whole, heads: headsOn(heads, { column, row, columnsEach, rowsEach }) }
}

interface SheetOfBoard {
  readonly column: number
  readonly row: number
  readonly columnsEach: number
  readonly rowsEach: number
}

/** Heads stand at the outer edge of the board alone. */
function headsOn(
  heads: GridHeads | undefined,
  { column, row, columnsEach, rowsEach }: SheetOfBoard,
): GridHeads | undefined {
  if (heads === undefined || (heads.at === 'top' ? row : column) > 0) return undefined
  const [from, each] = heads.at === 'top' ? [column * columnsEach, columnsEach] : [row * rowsEach, rowsEach]
  return { ...heads, heads: heads.heads.slice(from, from + each) }
}

/** Whether each sheet has cells. */
export function reachesEachSheet(
  { columns, rows }: { readonly columns: number; readonly rows: number },
  sheets: number,
): boolean {
  const { across, down } = joinedSheets(sheets)
  return columns >= across && rows >= down
}
