import type { LayoutRequest } from '../../../layouts/layout.js'
import type { PlacedArt } from '../../pieces/piece.js'
import { drawTextLine } from '../../pieces/text/text-line.js'
import { wordRules } from '../../pieces/text/type-scale.js'
import type { Block } from '../../sheets/furniture/column.js'
import { keyStrip } from '../../sheets/furniture/key-strip.js'
import { blockBox } from '../../sheets/grid.js'
import { DEFAULT_MARGIN_MM } from '../../sheets/margins.js'
import type { Sheet } from '../../sheets/sheet.js'
import { itemKey } from './item-key.js'
import type { PreparedItem } from './prepare-item.js'

/** Between the pieces and the strip under them. */
const CLEAR_MM = 2

/** What a strip takes of a sheet `widthMm` wide; nothing where the item wants none. */
export function stripHeightMm(request: LayoutRequest, widthMm: number): number {
  const { heightMm } = stripFor(request, widthMm - 2 * DEFAULT_MARGIN_MM)
  return heightMm === 0 ? 0 : heightMm + CLEAR_MM
}

/** The sheets with the key of their marks at their foot, where the item wants it there. */
export function withKeyStrip({ request, grid }: PreparedItem, sheets: readonly Sheet[]): readonly Sheet[] {
  const block = blockBox(grid)
  const strip = stripFor(request, block.widthMm)
  if (strip.heightMm === 0) return sheets
  const [xMm, yMm] = [block.xMm, block.yMm + block.heightMm + CLEAR_MM]
  const placed: PlacedArt[] = strip.art.map(art => ({ ...art, xMm: art.xMm + xMm, yMm: art.yMm + yMm }))
  return sheets.map(sheet => ({ ...sheet, furniture: [...sheet.furniture, ...placed] }))
}

function stripFor(request: LayoutRequest, widthMm: number): Block {
  const { item, typeface, type } = request
  return keyStrip({
    entries: item.key === 'strip' ? itemKey(request) : [],
    typeface,
    lettering: line => drawTextLine({ typeface, ...line }).art,
    widthMm,
    ...wordRules(type),
  })
}
