import { describe, expect, it } from 'vitest'
import { mmToPoints } from '../../../src/geometry.js'
import { typeScale } from '../../../src/pieces/text/type-scale.js'
import { bundledTypefaces } from '../bundled-typefaces.js'

describe.each(bundledTypefaces.map(typeface => [typeface.name, typeface] as const))(
  'in %s',
  (_, typeface) => {
    /** In points of a typeface whose x is half its em. */
    const points = (emMm: number) => mmToPoints(emMm * typeface.metrics.xHeight) / 0.5

    it('a set number is 6.5 points, running text 11, no word under 14', () => {
      const { setMarkMm, textMm, wordMinimumMm } = typeScale({ kind: 'normal' }, typeface)
      expect([setMarkMm, textMm, wordMinimumMm].map(points)).toEqual([
        expect.closeTo(6.5, 6),
        expect.closeTo(11, 6),
        expect.closeTo(14, 6),
      ])
    })

    it('large print has no word and no text that a child reads under 24 points', () => {
      const { textMm, listTextMm, wordMinimumMm } = typeScale({ kind: 'large' }, typeface)
      expect([textMm, listTextMm, wordMinimumMm].map(points)).toEqual([
        expect.closeTo(24, 6),
        expect.closeTo(24, 6),
        expect.closeTo(24, 6),
      ])
    })
  },
)
