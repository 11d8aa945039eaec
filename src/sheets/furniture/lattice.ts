/** A lattice of thin slanting lines for card backs: says nothing, and keeps print from showing through. */
import type { Box, Size } from '../../geometry.js'
import type { Art } from '../../pieces/piece.js'
import { drawStrokes, type Segment } from './strokes.js'

export interface LatticeRequest {
  /** What to cover. */
  readonly area: Box
  /** A corner of a card, in the same coordinates: the lattice keeps in step with it. */
  readonly corner: { readonly xMm: number; readonly yMm: number }
  readonly pieceSize: Size
}

const ABOUT_MM = 6
const STROKE_MM = 0.4
const COLOR = '#8c8c8c'

/**
 * The lattice over `area`, as art whose origin is the area's corner. A whole number of its diamonds fills a card, so
 * that cards side by side, their bleed and cards turned by 180° all join without a break.
 */
export function drawLattice({ area, corner, pieceSize }: LatticeRequest): Art {
  const stepX = pieceSize.widthMm / Math.max(1, Math.round(pieceSize.widthMm / ABOUT_MM))
  const stepY = pieceSize.heightMm / Math.max(1, Math.round(pieceSize.heightMm / ABOUT_MM))
  const left = (area.xMm - corner.xMm) / stepX
  const top = (area.yMm - corner.yMm) / stepY
  const right = left + area.widthMm / stepX
  const bottom = top + area.heightMm / stepY
  const toMm = (x: number, y: number): readonly [number, number] => [(x - left) * stepX, (y - top) * stepY]
  const segments: Segment[] = []
  for (let k = Math.ceil(left + top); k <= right + bottom; k++) {
    const [x1, x2] = [Math.max(left, k - bottom), Math.min(right, k - top)]
    if (x2 > x1) segments.push([...toMm(x1, k - x1), ...toMm(x2, k - x2)])
  }
  for (let k = Math.ceil(left - bottom); k <= right - top; k++) {
    const [x1, x2] = [Math.max(left, k + top), Math.min(right, k + bottom)]
    if (x2 > x1) segments.push([...toMm(x1, x1 - k), ...toMm(x2, x2 - k)])
  }
  const size = { widthMm: area.widthMm, heightMm: area.heightMm }
  return drawStrokes({ size, segments, widthMm: STROKE_MM, color: COLOR })
}
