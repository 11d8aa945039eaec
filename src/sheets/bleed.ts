/** The area just outside the cards that a pattern must cover too, so that a back printed askew shows no white edge. */
import type { Box, Size } from '../geometry.js'

/** Registration of backs ±1 mm and trim ±1 mm (common practice, no source), and one more to be sure. */
export const DEFAULT_BLEED_MM = 3

/** Boxes that do not overlap each other or any piece, and together cover all within `bleedMm` of a piece on the paper. */
export function bleedBoxes(pieces: readonly Box[], sheetSize: Size, bleedMm: number): readonly Box[] {
  const grown = pieces.map(piece => grow(piece, bleedMm, sheetSize))
  const xs = ascending([...pieces, ...grown].flatMap(box => [box.xMm, box.xMm + box.widthMm]))
  const ys = ascending([...pieces, ...grown].flatMap(box => [box.yMm, box.yMm + box.heightMm]))
  return ys.slice(1).flatMap((bottom, row) => {
    const top = ys[row]!
    const strips: Box[] = []
    xs.slice(1).forEach((right, column) => {
      const left = xs[column]!
      const middle = { xMm: (left + right) / 2, yMm: (top + bottom) / 2 }
      if (!holds(grown, middle) || holds(pieces, middle)) return
      const last = strips.at(-1)
      const touches = last !== undefined && Math.abs(last.xMm + last.widthMm - left) < 1e-6
      if (touches) strips[strips.length - 1] = { ...last, widthMm: right - last.xMm }
      else strips.push({ xMm: left, yMm: top, widthMm: right - left, heightMm: bottom - top })
    })
    return strips
  })
}

function grow(box: Box, mm: number, sheetSize: Size): Box {
  const left = Math.max(0, box.xMm - mm)
  const top = Math.max(0, box.yMm - mm)
  const right = Math.min(sheetSize.widthMm, box.xMm + box.widthMm + mm)
  const bottom = Math.min(sheetSize.heightMm, box.yMm + box.heightMm + mm)
  return { xMm: left, yMm: top, widthMm: right - left, heightMm: bottom - top }
}

function holds(boxes: readonly Box[], point: { readonly xMm: number; readonly yMm: number }): boolean {
  return boxes.some(
    box =>
      point.xMm > box.xMm &&
      point.xMm < box.xMm + box.widthMm &&
      point.yMm > box.yMm &&
      point.yMm < box.yMm + box.heightMm,
  )
}

function ascending(positions: readonly number[]): readonly number[] {
  return [...positions]
    .sort((a, b) => a - b)
    .filter((position, i, all) => i === 0 || position - all[i - 1]! > 1e-6)
}
