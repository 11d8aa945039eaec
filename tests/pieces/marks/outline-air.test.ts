import { describe, expect, it } from 'vitest'
import { inkRulesFor } from '../../../src/pieces/marks/ink-rules.js'
import type { StyledMark } from '../../../src/pieces/marks/styled-mark.js'
import { outlineStyles } from '../../../src/pieces/marks/styles.js'
import { leastEmMm } from '../../../src/pieces/text/type-size.js'
import { drawWord } from '../../../src/pieces/word/word-art.js'
import { bundledTypefaces } from '../bundled-typefaces.js'
import { renderLayers, whiteBetweenMm } from '../pixels.js'

const dpi = 300
/** Half-covered pixels may stand up to one nearer on either side. */
const blurMm = 2 * (25.4 / dpi)
const colour = '#ff0000'
const frames = outlineStyles.filter(style => style.kind === 'frame').map(({ name }) => name)

describe.each(bundledTypefaces)('the white on both sides of an outline, in $family', typeface => {
  it.each(frames)('is half as much again as any mark keeps from ink: %s', outline => {
    const sizeMm = leastEmMm(typeface, { kind: 'normal' })
    const { gapMm } = inkRulesFor(sizeMm, false)
    for (const [word, start, end] of [
      ['reed', 1, 3],
      ['jetty', 2, 4],
      ['bridge', 3, 6],
    ] as const) {
      const mark: StyledMark = {
        mark: { place: { file: 'plan.yaml' }, target: { kind: 'letters', letters: 'x' } },
        index: 0,
        outline,
        color: colour,
        descenders: 'clear',
        assigned: false,
      }
      const { art } = drawWord({ typeface, word, spans: [{ mark, ranges: [{ start, end }] }], sizeMm })
      const canvas = { widthMm: art.widthMm + 2, heightMm: art.heightMm + 2, xMm: 1, yMm: 1, dpi }
      const ofMark = art.shapes.filter(shape => shape.kind === 'path' && shape.stroke?.color === colour)
      const [line, letters] = renderLayers(
        [ofMark, art.shapes.filter(shape => !ofMark.includes(shape))],
        canvas,
      )
      expect(whiteBetweenMm(line!, letters!, 2)).toBeGreaterThan(1.5 * gapMm - blurMm)
    }
  })
})
