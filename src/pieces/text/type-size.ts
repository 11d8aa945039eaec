import { mmToPoints, pointsToMm } from '../../geometry.js'
import type { TypeSize } from '../../plan/plan.js'
import { xHeightForAcuityMm } from '../../plan/values/acuity.js'
import type { Typeface } from '../typeface/typeface.js'

/**
 * Sizes are compared by the height of x, because that is what a reader sees: two typefaces at 24 points may differ by an
 * eighth. `normal` and `large` are points of a typeface whose x is half its em, which is near the bundled ones.
 */
export const REFERENCE_X_HEIGHT = 0.5

/**
 * Least sizes in points of the reference typeface. Clear print is 12 to 14 point (RNIB); large print is 18 point or more
 * (American Printing House for the Blind), giant print 24 or more (RNIB).
 */
export const leastPoints = { normal: 14, large: 24 } as const

/** Height of x that no word of a set may fall below, in mm. */
export function leastXHeightMm(size: TypeSize): number {
  switch (size.kind) {
    case 'normal':
    case 'large':
      return pointsToMm(leastPoints[size.kind]) * REFERENCE_X_HEIGHT
    case 'points':
      return pointsToMm(size.points) * REFERENCE_X_HEIGHT
    case 'x-height':
      return size.mm
    case 'acuity':
      return xHeightForAcuityMm(size)
  }
}

/** The em in mm at which the typeface's x is `xHeightMm` high. */
export function emForXHeight(typeface: Typeface, xHeightMm: number): number {
  return xHeightMm / typeface.metrics.xHeight
}

/**
 * The least em in mm for a size in this typeface. Where the teacher names points she means points of this typeface; all other
 * sizes go by the height of x.
 */
export function leastEmMm(typeface: Typeface, size: TypeSize): number {
  if (size.kind === 'points') return pointsToMm(size.points)
  return emForXHeight(typeface, leastXHeightMm(size))
}

/** Whether a size asks for large print: heavier marks, more space, no small text on a piece. */
export function isLargePrint(typeface: Typeface, size: TypeSize): boolean {
  if (size.kind === 'normal') return false
  if (size.kind === 'large') return true
  return mmToPoints(leastEmMm(typeface, size)) * (typeface.metrics.xHeight / REFERENCE_X_HEIGHT) >= 18
}
