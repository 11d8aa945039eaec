import { describe, expect, it } from 'vitest'
import { inkRulesFor } from '../../../src/pieces/marks/ink-rules.js'
import type { MarkSpan, StyledMark } from '../../../src/pieces/marks/styled-mark.js'
import { lineStyles, outlineStyles } from '../../../src/pieces/marks/styles.js'
import { leastEmMm } from '../../../src/pieces/text/type-size.js'
import { drawWord } from '../../../src/pieces/word/word-art.js'
import { bundledTypefaces } from '../bundled-typefaces.js'
import { columnsOf, render, renderLayers, rowsOf, whiteBetweenMm, widestWhiteMm } from '../pixels.js'

const dpi = 300
/** Half-covered pixels may stand up to one nearer on either side. */
const blurMm = 2 * (25.4 / dpi)

const colours = ['#ff0000', '#00ff00', '#0000ff'] as const

function mark(looks: Partial<StyledMark>, index: number): StyledMark {
  const target = { kind: 'letters', letters: 'x' } as const
  const color = colours[index]!
  return {
    mark: { place: { file: 'plan.yaml' }, target },
    index,
    color,
    descenders: 'clear',
    assigned: false,
    ...looks,
  }
}

/** The ink of each mark of a word apart, in pixels. */
function inkOfMarks(word: string, spans: readonly MarkSpan[], typeface: (typeof bundledTypefaces)[number]) {
  const sizeMm = leastEmMm(typeface, { kind: 'normal' })
  const { art } = drawWord({ typeface, word, spans, sizeMm })
  const canvas = { widthMm: art.widthMm + 2, heightMm: art.heightMm + 2, xMm: 1, yMm: 1, dpi }
  const inColour = (colour: string) =>
    art.shapes.filter(
      shape => shape.kind === 'path' && (shape.fill === colour || shape.stroke?.color === colour),
    )
  return renderLayers(colours.slice(0, spans.length).map(inColour), canvas)
}

const lines = lineStyles.filter(style => style.stands === 'under').map(({ name }) => ({ line: name }))
const frames = outlineStyles.filter(style => style.kind === 'frame').map(({ name }) => ({ outline: name }))
const styles = [...lines, ...frames]
const pairs = styles.flatMap(one => styles.map(other => [one, other] as const))
const nameOf = (looks: Partial<StyledMark>): string => looks.line ?? looks.outline ?? ''

/** The widest white that a style of several strokes has inside it, over three letters at the smallest size. */
const insideMm = Math.max(
  ...[{ line: 'dashed' }, { line: 'dotted' }, { line: 'double' }].map(looks => {
    const [ink] = inkOfMarks(
      'sheath',
      [{ mark: mark(looks, 0), ranges: [{ start: 0, end: 3 }] }],
      bundledTypefaces[0]!,
    )
    return widestWhiteMm(ink!)
  }),
)

describe('the white inside a style, in pixels at the smallest size', () => {
  it('is what the rules say', () => {
    const { insideMm: most } = inkRulesFor(leastEmMm(bundledTypefaces[0]!, { kind: 'normal' }), false)
    expect(insideMm).toBeGreaterThan(most - blurMm)
    expect(insideMm).toBeLessThan(most + blurMm)
  })
})

describe.each(bundledTypefaces)('two marks in $family, in pixels at the smallest size', typeface => {
  it('on letters side by side have more white between them than any style has inside', () => {
    const near = pairs.flatMap(([one, other]) => {
      const [first, second] = inkOfMarks(
        'sheath',
        [
          { mark: mark(one, 0), ranges: [{ start: 0, end: 2 }] },
          { mark: mark(other, 1), ranges: [{ start: 2, end: 4 }] },
        ],
        typeface,
      )
      const white = whiteBetweenMm(first!, second!, 3)
      return white > insideMm ? [] : [`${nameOf(one)} beside ${nameOf(other)}: ${white.toFixed(2)} mm`]
    })
    expect(near).toEqual([])
  })

  it('on the same letters, if both are lines, have half as much again', () => {
    const near = lines.flatMap(one =>
      lines.flatMap(other => {
        if (one === other) return []
        const [first, second] = inkOfMarks(
          'night',
          [
            { mark: mark(one, 0), ranges: [{ start: 1, end: 4 }] },
            { mark: mark(other, 1), ranges: [{ start: 1, end: 4 }] },
          ],
          typeface,
        )
        const white = whiteBetweenMm(first!, second!, 3)
        return white > 1.5 * insideMm ? [] : [`${one.line} over ${other.line}: ${white.toFixed(2)} mm`]
      }),
    )
    expect(near).toEqual([])
  })

  it('that are neighbours and lines hang at different levels, three in a row in turn', () => {
    const spans = ['dashed', 'thick', 'wavy'].map(
      (line, index): MarkSpan => ({
        mark: mark({ line }, index),
        ranges: [{ start: 2 * index, end: 2 * index + 2 }],
      }),
    )
    const [first, second, third] = inkOfMarks('sheath', spans, typeface).map(ink => rowsOf(ink)!)
    expect(second!.first).toBeGreaterThan(first!.last)
    expect(second!.first).toBeGreaterThan(third!.last)
    expect(Math.abs(first!.first - third!.first)).toBeLessThanOrEqual(1)
  })
})

describe('the two ends of a split pattern', () => {
  it.each(bundledTypefaces)('are joined by a straight line with square corners, in $family', typeface => {
    const sizeMm = 12
    const spans: readonly MarkSpan[] = [
      {
        mark: mark({ outline: 'heavy' }, 0),
        ranges: [
          { start: 1, end: 2 },
          { start: 3, end: 4 },
        ],
      },
    ]
    const { art } = drawWord({ typeface, word: 'cake', spans, sizeMm })
    const link = art.shapes.filter(shape => shape.kind === 'path' && shape.fill === 'none')
    const picture = render(link, {
      widthMm: art.widthMm + 2,
      heightMm: art.heightMm + 2,
      xMm: 1,
      yMm: 1,
      dpi,
    })
    const [columns, rows] = [columnsOf(picture)!, rowsOf(picture)!]
    const strokePixels = (inkRulesFor(sizeMm, false).strokeMm / 25.4) * dpi
    const row = (y: number): number => {
      const start = y * picture.width
      return picture.values.subarray(start, start + picture.width).filter(value => value >= 128).length
    }
    // The foot runs straight from edge to edge; above it there are two upright strokes and nothing else.
    expect(row(rows.last - 1)).toBe(columns.last - columns.first + 1)
    expect(Math.abs(row(rows.first + 1) - 2 * strokePixels)).toBeLessThanOrEqual(2)
  })
})
