import { describe, expect, it } from 'vitest'
import { pointsToMm } from '../../../src/geometry.js'
import type { StyledMark } from '../../../src/pieces/marks/styled-mark.js'
import { outlineStyles } from '../../../src/pieces/marks/styles.js'
import { drawWord } from '../../../src/pieces/word/word-art.js'
import { bundledTypeface } from '../bundled-typefaces.js'
import { type Coverage, render } from '../pixels.js'

const dpi = 300
const mmPerPixel = 25.4 / dpi
const colour = '#ff0000'
const typeface = bundledTypeface('andika')
const frames = outlineStyles.filter(style => style.kind === 'frame').map(({ name }) => name)

/** The white between one letter and the next, in mm, in columns of pixels; letters of these words do not overlap. */
function gapsIn(word: string, sizeMm: number, outlined?: { outline: string; start: number; end: number }) {
  const spans =
    outlined === undefined
      ? []
      : [{ mark: markOf(outlined.outline), ranges: [{ start: outlined.start, end: outlined.end }] as const }]
  const { art } = drawWord({ typeface, word, spans, sizeMm })
  const letters = art.shapes.filter(shape => shape.kind !== 'path' || shape.stroke?.color !== colour)
  const canvas = { widthMm: art.widthMm + 2, heightMm: art.heightMm + 2, xMm: 1, yMm: 1, dpi }
  return whiteBetweenColumns(render(letters, canvas))
}

/** Runs of columns without ink, but those at the two ends. */
function whiteBetweenColumns({ width, values }: Coverage): readonly number[] {
  const inked = Array.from({ length: width }, () => false)
  values.forEach((value, index) => {
    if (value >= 128) inked[index % width] = true
  })
  const runs =
    inked
      .map(each => (each ? 'x' : ' '))
      .join('')
      .trim()
      .match(/ +/g) ?? []
  return runs.map(run => run.length * mmPerPixel)
}

function markOf(outline: string): StyledMark {
  return {
    mark: { place: { file: 'plan.yaml' }, target: { kind: 'letters', letters: 'x' } },
    index: 0,
    outline,
    color: colour,
    descenders: 'clear',
    assigned: false,
  }
}

/** Half-covered pixels may fall on either side of an edge. */
const blurMm = 2.1 * mmPerPixel

describe.each([14, 24, 48])('a word with an outline, at %i points', points => {
  const sizeMm = pointsToMm(points)
  // Strokes and the white beside them do not shrink below what a copier holds, so that small words are opened further.
  const mostMm = { 14: 0.36, 24: 0.25, 48: 0.23 }[points]! * sizeMm

  it.each(frames)('is opened at the outline’s two edges and nowhere else: %s', outline => {
    // t, r | ee | d: five letters, four gaps, the outline around the third and the fourth letter.
    const plain = gapsIn('treed', sizeMm)
    const opened = gapsIn('treed', sizeMm, { outline, start: 2, end: 4 })
    expect([plain.length, opened.length]).toEqual([4, 4])
    const added = opened.map((gap, index) => gap - plain[index]!)
    for (const elsewhere of [added[0]!, added[2]!]) expect(Math.abs(elsewhere)).toBeLessThan(blurMm)
    for (const edge of [added[1]!, added[3]!]) {
      expect(edge).toBeGreaterThan(0)
      expect(edge).toBeLessThan(mostMm + blurMm)
    }
  })
})
