import { describe, expect, it } from 'vitest'
import {
  type BorderCorners,
  type BorderLine,
  borderCorners,
  borderLines,
  drawBorder,
} from '../../../src/pieces/parts/borders.js'
import { type Coverage, columnsOf, render, rowsOf } from '../pixels.js'

const size = { widthMm: 50, heightMm: 34 }
const dpi = 300
const pixels = (mm: number): number => (mm / 25.4) * dpi

/** A border with 2 mm of paper around it. */
function printed(line: BorderLine, corners: BorderCorners): Coverage {
  const shapes = drawBorder({ line, corners, size })
  return render(shapes, { widthMm: 54, heightMm: 38, xMm: 2, yMm: 2, dpi })
}

const borders = borderLines.flatMap(line => borderCorners.map(corners => ({ line, corners })))

describe.each(borders)('a $line border with $corners corners', ({ line, corners }) => {
  const picture = printed(line, corners)

  it('reaches the edges of its room and stays within them', () => {
    const [columns, rows] = [columnsOf(picture)!, rowsOf(picture)!]
    expect(columns.first).toBeGreaterThanOrEqual(Math.floor(pixels(2)))
    expect(columns.last).toBeLessThanOrEqual(Math.ceil(pixels(52)))
    expect(rows.first).toBeGreaterThanOrEqual(Math.floor(pixels(2)))
    expect(rows.last).toBeLessThanOrEqual(Math.ceil(pixels(36)))
    expect(columns.last - columns.first).toBeGreaterThan(pixels(49.5))
    expect(rows.last - rows.first).toBeGreaterThan(pixels(33.5))
  })

  it('leaves the middle of the card alone', () => {
    for (let y = Math.ceil(pixels(7)); y < pixels(31); y++)
      for (let x = Math.ceil(pixels(7)); x < pixels(47); x++)
        if (picture.values[y * picture.width + x]! > 0) expect.fail(`ink at pixel ${x}, ${y}`)
  })
})

describe('dashes', () => {
  it('meet in square corners', () => {
    const { values, width } = printed('dashed', 'square')
    const inkAt = (xMm: number, yMm: number): boolean =>
      values[Math.round(pixels(yMm)) * width + Math.round(pixels(xMm))]! >= 128
    for (const [x, y] of [
      [3, 2.25],
      [2.25, 3],
      [51, 2.25],
      [51.75, 35],
      [3, 35.75],
    ] as const)
      expect(inkAt(x, y)).toBe(true)
  })
})
