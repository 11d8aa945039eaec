import type { LayoutRequest } from '../../../layouts/layout.js'
import { wordRules } from '../../pieces/text/type-scale.js'
import type { Block } from '../../sheets/furniture/column.js'
import { keyStrip } from '../../sheets/furniture/key-strip.js'
import { DEFAULT_MARGIN_MM } from '../../sheets/margins.js'
import { itemKey } from './item-key.js'
import { letteringIn } from './lettering-in.js'

/** Between the pieces and the strip under them. */
export const STRIP_CLEAR_MM = 2

/** Of the width: in larger print a strip would leave no room for pieces. */
const TEXT_SHARE = 1 / 18

/** What a strip takes of a sheet `widthMm` wide; nothing where the item wants none. */
export function stripHeightMm(request: LayoutRequest, widthMm: number): number {
  const { heightMm } = stripFor(request, widthMm - 2 * DEFAULT_MARGIN_MM)
  return heightMm === 0 ? 0 : heightMm + STRIP_CLEAR_MM
}

/** The key on a strip this wide; of no height where the item wants none. */
export function stripFor(request: LayoutRequest, widthMm: number): Block {
  const { item, typeface, type } = request
  const { large, leastTextMm } = { leastTextMm: 0, ...wordRules(type) }
  return keyStrip({
    entries: item.key === 'strip' ? itemKey(request) : [],
    typeface,
    lettering: letteringIn(typeface),
    widthMm,
    large,
    leastTextMm: Math.min(leastTextMm, widthMm * TEXT_SHARE),
  })
}
