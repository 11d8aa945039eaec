/** The area just outside the cards that a pattern must cover too, so that a back printed askew shows no white edge. */
import type { Box, Size } from '../geometry.js'

/** Registration of backs ±1 mm and trim ±1 mm (common practice, no source), and one more to be sure. */
export const DEFAULT_BLEED_MM = 3

export interface BleedArea {
  readonly area: Box
  /** The nearest piece, whose pattern is carried on here. */
  readonly piece: Box
}

/** Boxes that overlap neither each other nor any piece, and together cover all within `bleedMm` of a piece on the paper. */
export function bleedAreas(pieces: readonly Box[], sheetSize: Size, bleedMm: number): readonly BleedArea[] {
  const grown = pieces.map(piece => grow(piece, bleedMm, sheetSize))
  const xs = ascending([...pieces, ...grown].flatMap(box => [box.xMm, box.xMm + box.widthMm]))
  const ys = ascending([...pieces, ...grown].flatMap(box => [box.yMm, box.yMm + box.heightMm]))
  return ys.slice(1).flatMap((bottom, row) => {
    const top = ys[row]!
    const strips: BleedArea[] = []
    for (const [column, right] of xs.slice(1).entries()) {
      const left = xs[column]!
      const middle = { xMm: (left + right) / 2, yMm: (top + bottom) / 2 }
      if (!holds(grown, middle) || holds(pieces, middle)) continue
      const piece = nearest(pieces, middle)
      const last = strips.at(-1)
      const joins = last?.piece === piece && Math.abs(last.area.xMm + last.area.widthMm - left) < 1e-6
      if (joins) strips.pop()
      const from = joins ? last.area.xMm : left
      strips.push({ area: { xMm: from, yMm: top, widthMm: right - from, heightMm: bottom - top }, piece })
    }
    return strips
  })
}

interface Point {
  readonly xMm: number
  readonly yMm: number
}

function grow(box: Box, mm: number, sheetSize: Size): Box {
  const left = Math.max(0, box.xMm - mm)
  const top = Math.max(0, box.yMm - mm)
  const right = Math.min(sheetSize.widthMm, box.xMm + box.widthMm + mm)
  const bottom = Math.min(sheetSize.heightMm, box.yMm + box.heightMm + mm)
  return { xMm: left, yMm: top, widthMm: right - left, heightMm: bottom - top }
}

function holds(boxes: readonly Box[], point: Point): boolean {
  return boxes.some(box => distance(box, point) === 0)
}

function nearest(boxes: readonly Box[], point: Point): Box {
  return boxes.reduce((best, box) => (distance(box, point) < distance(best, point) ? box : best))
}

/** From the point to the box's edge; 0 inside. */
function distance(box: Box, { xMm, yMm }: Point): number {
  const x = Math.max(box.xMm - xMm, 0, xMm - box.xMm - box.widthMm)
  const y = Math.max(box.yMm - yMm, 0, yMm - box.yMm - box.heightMm)
  return Math.hypot(x, y)
}

function ascending(positions: readonly number[]): readonly number[] {
  return [...positions]
    .sort((a, b) => a - b)
    .filter((position, i, all) => i === 0 || position - all[i - 1]! > 1e-6)
}
