/**
 * Sizes of type. Clear print is 12 to 14 points, large print 16 to 22, giant print 24 and more (RNIB). Large print is
 * 18 points or more (American Printing House for the Blind). One M unit is the letter that subtends 5 minutes of arc at
 * one metre, 1.4544 mm high (computed); with a reserve of 2 to 1 for fluent reading (Latham and Tabrett 2012;
 * Whittaker and Lovie-Kitchin 1993, from memory).
 */
import { describe, expect, it } from 'vitest'
import { mmToPoints } from '../../src/geometry.js'
import { isLargePrint, leastEmMm, leastPoints, leastXHeightMm } from '../../src/pieces/text/type-size.js'
import { bundledTypefaces } from '../pieces/bundled-typefaces.js'

const acuity = (logMar: number, distanceMm: number) =>
  ({ kind: 'acuity', logMar, distanceMm, reserve: 2 }) as const

describe('sizes', () => {
  it('normal is clear print, large is giant print', () => {
    expect(leastPoints.normal).toBeGreaterThanOrEqual(14)
    expect(leastPoints.large).toBeGreaterThanOrEqual(24)
  })

  it('one M unit is the x of the letter that subtends 5 minutes of arc at 1 m: 1.4544 mm', () => {
    expect(leastXHeightMm({ kind: 'acuity', logMar: 0, distanceMm: 1000, reserve: 1 })).toBeCloseTo(1.4544, 4)
  })

  it('from acuity: 20/200 at 40 cm asks for an x 11.636 mm high, 20/100 at 25 cm for 3.645 mm', () => {
    expect(leastXHeightMm(acuity(1.0, 400))).toBeCloseTo(11.636, 3)
    expect(leastXHeightMm(acuity(0.7, 250))).toBeCloseTo(3.645, 3)
  })
})

describe.each(bundledTypefaces)('in $family', typeface => {
  const xHeight = typeface.metrics.xHeight

  it('a size is the same height of x as in any other face', () => {
    expect(leastEmMm(typeface, { kind: 'large' }) * xHeight).toBeCloseTo(
      leastXHeightMm({ kind: 'large' }),
      10,
    )
    expect(leastEmMm(typeface, { kind: 'x-height', mm: 6 }) * xHeight).toBeCloseTo(6, 10)
  })

  it('points are points of this face', () => {
    expect(mmToPoints(leastEmMm(typeface, { kind: 'points', points: 24 }))).toBeCloseTo(24, 10)
  })

  it('large is large print by either house, normal is not', () => {
    expect(isLargePrint(typeface, { kind: 'large' })).toBe(true)
    expect(mmToPoints(leastEmMm(typeface, { kind: 'large' }))).toBeGreaterThanOrEqual(18)
    expect(isLargePrint(typeface, { kind: 'normal' })).toBe(false)
  })
})

describe('what counts as large print', () => {
  const andika = bundledTypefaces[0]!

  it('goes by the height of x: 18 points of a face whose x is half its em', () => {
    expect(isLargePrint(andika, { kind: 'points', points: 17 })).toBe(false)
    expect(isLargePrint(andika, { kind: 'points', points: 19 })).toBe(true)
    expect(isLargePrint(andika, { kind: 'x-height', mm: 3.1 })).toBe(false)
    expect(isLargePrint(andika, { kind: 'x-height', mm: 3.2 })).toBe(true)
  })
})
