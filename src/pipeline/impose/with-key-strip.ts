import type { PieceOutline, PlacedArt } from '../../pieces/piece.js'
import { blockBox } from '../../sheets/grid.js'
import type { Sheet } from '../../sheets/sheet.js'
import { STRIP_CLEAR_MM, stripFor } from '../deal/item-strip.js'
import type { PreparedItem } from '../deal/prepare-item.js'

/** The sheets with the key of their marks at their foot, where the item wants it there. */
export function withKeyStrip<P extends PieceOutline>(
  { request, grid }: PreparedItem,
  sheets: readonly Sheet<P>[],
): readonly Sheet<P>[] {
  const block = blockBox(grid)
  const strip = stripFor(request, block.widthMm)
  if (strip.heightMm === 0) return sheets
  const [xMm, yMm] = [block.xMm, block.yMm + block.heightMm + STRIP_CLEAR_MM]
  const placed: PlacedArt[] = strip.art.map(art => ({ ...art, xMm: art.xMm + xMm, yMm: art.yMm + yMm }))
  return sheets.map(sheet => ({ ...sheet, furniture: [...sheet.furniture, ...placed] }))
}
