import { type GlyphInk, type InkRow, rowHeightEm } from '../typeface/glyph-outline.js'

/** A rectangle by its edges: mm from the pen's start (x) and from the baseline (y, downwards). */
export interface Extent {
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
}

/** The ink of one letter (or of a ligature's letters) where it stands in a word. */
export interface LetterInk extends Extent {
  /** Text indices. */
  readonly start: number
  readonly end: number
  /** How many rows there are, `rowMm` high, from `firstRow` down. */
  readonly rowCount: number
  /** Ink of one of them, counted from 0, in mm: of most letters nobody asks, of the others for a few. */
  readonly rowAt: (index: number) => InkRow
  readonly firstRow: number
  readonly rowMm: number
}

export function placeInk(
  ink: GlyphInk,
  glyph: { readonly xEm: number; readonly yEm: number; readonly start: number; readonly end: number },
  sizeMm: number,
): LetterInk {
  const { xEm, yEm } = glyph
  // Glyphs moved up or down (accents set apart) shift by whole rows; half a row is 0.004 em.
  const shift = Math.round(yEm / rowHeightEm)
  return {
    start: glyph.start,
    end: glyph.end,
    left: (xEm + ink.left) * sizeMm,
    right: (xEm + ink.right) * sizeMm,
    top: (yEm + ink.top) * sizeMm,
    bottom: (yEm + ink.bottom) * sizeMm,
    rowCount: ink.rowCount,
    rowAt: index => {
      const row = ink.rows[index]!
      return { left: (xEm + row.left) * sizeMm, right: (xEm + row.right) * sizeMm }
    },
    firstRow: ink.firstRow + shift,
    rowMm: rowHeightEm * sizeMm,
  }
}

/** Leftmost and rightmost ink of a letter between two heights; undefined where there is none. */
export function inkBetween(
  letter: LetterInk,
  topMm: number,
  bottomMm: number,
): { readonly left: number; readonly right: number } | undefined {
  let left = Infinity
  let right = -Infinity
  const from = Math.max(0, Math.floor(topMm / letter.rowMm) - letter.firstRow)
  const to = Math.min(letter.rowCount - 1, Math.floor(bottomMm / letter.rowMm) - letter.firstRow)
  for (let index = from; index <= to; index++) {
    const row = letter.rowAt(index)
    left = Math.min(left, row.left)
    right = Math.max(right, row.right)
  }
  return left <= right ? { left, right } : undefined
}

/** More than rows, which are reckoned for themselves, reach beyond the whole letter. */
const ROUNDING_MM = 1e-9

/** Whether a letter's ink comes nearer than `gapMm` to the rectangle. */
export function comesNear(letter: LetterInk, area: Extent, gapMm: number): boolean {
  const awayMm = gapMm + ROUNDING_MM
  if (letter.left > area.right + awayMm || letter.right < area.left - awayMm) return false
  const ink = inkBetween(letter, area.top - gapMm, area.bottom + gapMm)
  return ink !== undefined && ink.left < area.right + gapMm && ink.right > area.left - gapMm
}

/** Height of the lowest ink between two x positions; -Infinity where there is none. */
export function lowestInk(letter: LetterInk, leftMm: number, rightMm: number): number {
  for (let index = letter.rowCount - 1; index >= 0; index--) {
    const row = letter.rowAt(index)
    if (row.left < rightMm && row.right > leftMm)
      return Math.min(letter.bottom, (letter.firstRow + index + 1) * letter.rowMm)
  }
  return -Infinity
}

/** Whether two rectangles come nearer than `gapMm`. */
export function areNear(a: Extent, b: Extent, gapMm: number): boolean {
  return (
    a.left < b.right + gapMm &&
    b.left < a.right + gapMm &&
    a.top < b.bottom + gapMm &&
    b.top < a.bottom + gapMm
  )
}

/** The smallest rectangle around all; undefined where there are none. */
export function around(extents: readonly Extent[]): Extent | undefined {
  if (extents.length === 0) return undefined
  let left = Infinity
  let right = -Infinity
  let top = Infinity
  let bottom = -Infinity
  for (const extent of extents) {
    left = Math.min(left, extent.left)
    right = Math.max(right, extent.right)
    top = Math.min(top, extent.top)
    bottom = Math.max(bottom, extent.bottom)
  }
  return { left, right, top, bottom }
}
