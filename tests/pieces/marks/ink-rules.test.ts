import { describe, expect, it } from 'vitest'
import { inkRulesFor } from '../../../src/pieces/marks/ink-rules.js'
import { lineStyle } from '../../../src/pieces/marks/styles.js'
import { render } from '../pixels.js'

const sizes = [3, 4.94, 7, 10, 16, 30, 60]

describe('strokes and gaps', () => {
  it.each(sizes)('hold on an office printer with an em of %d mm', sizeMm => {
    for (const large of [false, true]) {
      const { strokeMm, gapMm } = inkRulesFor(sizeMm, large)
      expect(strokeMm).toBeGreaterThanOrEqual(0.35)
      expect(gapMm).toBeGreaterThanOrEqual(0.4)
    }
  })

  it('grow with the type, and are heavier in large print', () => {
    expect(inkRulesFor(30, false).strokeMm).toBeGreaterThan(inkRulesFor(10, false).strokeMm)
    for (const sizeMm of sizes)
      expect(inkRulesFor(sizeMm, true).strokeMm).toBeGreaterThan(inkRulesFor(sizeMm, false).strokeMm)
  })
})

describe('the white within a broken line', () => {
  const dpi = 1200
  const ink = inkRulesFor(4.94, false)

  /** Lengths in mm of the runs of black and of white along the middle of the line. */
  function runs(
    name: string,
    widthMm: number,
  ): { readonly black: readonly number[]; readonly white: readonly number[] } {
    const style = lineStyle(name)
    const heightMm = style.heightMm(ink, widthMm)
    const paths = style.draw({ left: 1, right: 1 + widthMm, top: 1, bottom: 1 + heightMm }, ink)
    const shapes = paths.map(({ commands }) => ({
      kind: 'path' as const,
      fill: '#000000',
      d: commands.map(({ type, values }) => type + values.join(' ')).join(''),
    }))
    const picture = render(shapes, { widthMm: widthMm + 2, heightMm: heightMm + 2, xMm: 0, yMm: 0, dpi })
    const middle = Math.floor(((1 + heightMm / 2) / 25.4) * dpi) * picture.width
    const row = [...picture.values.subarray(middle, middle + picture.width)].map(value =>
      value >= 128 ? 'x' : ' ',
    )
    const trimmed = row.join('').trim()
    const lengths = (pattern: RegExp): number[] =>
      (trimmed.match(pattern) ?? []).map(run => (run.length / dpi) * 25.4)
    return { black: lengths(/x+/g), white: lengths(/ +/g) }
  }

  it.each(['dashed', 'dotted'])('%s has at least 0.4 mm of white and 0.35 mm of black in each run', name => {
    for (let widthMm = 1.8; widthMm < 30; widthMm += 0.37) {
      const { black, white } = runs(name, widthMm)
      expect(Math.min(...white), `white at ${widthMm}`).toBeGreaterThan(0.4 - 0.03)
      expect(Math.min(...black), `black at ${widthMm}`).toBeGreaterThan(0.35 - 0.03)
      expect(black.length).toBeGreaterThanOrEqual(2)
    }
  })

  it('is the same all along', () => {
    for (const name of ['dashed', 'dotted']) {
      const { white } = runs(name, 17.3)
      expect(Math.max(...white) - Math.min(...white)).toBeLessThan(0.05)
    }
  })
})
