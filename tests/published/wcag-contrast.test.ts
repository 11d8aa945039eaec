/**
 * Contrast ratio and relative luminance: Web Content Accessibility Guidelines 2.2 (W3C), glossary
 * and success criteria 1.4.3 (4.5 to 1), 1.4.6 (7 to 1) and 1.4.11 (3 to 1). The ratios are computed from the formula
 * by another route and agree to the sixth decimal.
 */
import { describe, expect, it } from 'vitest'
import {
  contrastRatio,
  leastMarkContrast,
  leastTypeContrast,
  relativeLuminance,
  shownRatio,
} from '../../src/pieces/marks/contrast.js'

const onWhite: readonly (readonly [color: string, ratio: number])[] = [
  ['#777777', 4.478089],
  ['#767676', 4.542225],
  ['#949494', 3.03347],
  ['#595959', 7.004729],
  ['#ff0000', 3.998477],
  ['#0000ff', 8.592471],
]

describe('contrast by the formula of WCAG 2.2', () => {
  it.each(onWhite)('%s on white is %d to 1', (color, ratio) => {
    expect(contrastRatio(color, '#ffffff')).toBeCloseTo(ratio, 6)
  })

  it('black on white is 21 to 1, a colour on itself 1 to 1', () => {
    expect(contrastRatio('#000000', '#ffffff')).toBeCloseTo(21, 10)
    expect(contrastRatio('#00618a', '#00618a')).toBe(1)
  })

  it('is the same either way round', () => {
    expect(contrastRatio('#ffffff', '#00618a')).toBe(contrastRatio('#00618a', '#ffffff'))
  })

  it('weighs red, green and blue as the glossary does', () => {
    expect(relativeLuminance('#ff0000')).toBeCloseTo(0.2126, 10)
    expect(relativeLuminance('#00ff00')).toBeCloseTo(0.7152, 10)
    expect(relativeLuminance('#0000ff')).toBeCloseTo(0.0722, 10)
  })

  it('holds type to 7 to 1 and marks to 4.5 to 1', () => {
    expect([leastTypeContrast, leastMarkContrast]).toEqual([7, 4.5])
  })

  it('is never shown rounded up: 4.478 is not enough and does not read as if it were', () => {
    expect(shownRatio(contrastRatio('#777777', '#ffffff'))).toBe('4.47')
    expect(shownRatio(4.4999)).toBe('4.49')
    expect(shownRatio(4.5)).toBe('4.50')
  })
})
