/**
 * CSS Values and Units Module Level 4 (W3C), §6.2, absolute lengths: 1 in = 2.54 cm = 96 px = 72 pt, 1 mm = 1/10 cm.
 * An SVG's `width` and `height` in mm are read by the same units (SVG 2, §8.2).
 */
import { Resvg } from '@resvg/resvg-js'
import { describe, expect, it } from 'vitest'
import { sheetToSvg } from '../../src/files/page/svg.js'
import { inchesToMm, mmToPixels, mmToPoints, pointsToMm } from '../../src/geometry.js'
import type { Sheet } from '../../src/sheets/sheet.js'

describe('lengths', () => {
  it('an inch is 25.4 mm, 72 points and 96 CSS pixels', () => {
    expect(inchesToMm(1)).toBe(25.4)
    expect(mmToPoints(25.4)).toBeCloseTo(72, 12)
    expect(pointsToMm(72)).toBeCloseTo(25.4, 12)
    expect(mmToPixels(25.4, 96)).toBe(96)
  })

  it('a millimetre is 96 / 25.4 CSS pixels', () => {
    expect(mmToPixels(1, 96)).toBeCloseTo(3.7795275590551, 12)
  })
})

describe('a sheet’s SVG, read by a program that knows CSS units alone', () => {
  // Letter is 8.5 × 11 in: 816 × 1056 px. A4 is 793.70 × 1122.52 px. A 4 × 6 in card is 384 × 576 px.
  it.each([
    ['Letter', 215.9, 279.4, 816, 1056],
    ['A4', 210, 297, 793.7, 1122.52],
    ['4 × 6 in card', 101.6, 152.4, 384, 576],
  ])('%s is %d × %d mm and %d × %d px', (_name, widthMm, heightMm, width, height) => {
    const square = { widthMm: 25.4, heightMm: 25.4, text: [] }
    const inch: Sheet = {
      number: 1,
      side: 'front',
      kind: 'cover',
      title: 'An inch',
      widthMm,
      heightMm,
      pieces: [],
      cuts: [],
      furniture: [
        {
          art: { ...square, shapes: [{ kind: 'path', d: 'M0 0L25.4 0L25.4 25.4L0 25.4Z', fill: '#000000' }] },
          xMm: 12.7,
          yMm: 12.7,
        },
      ],
    }
    const read = new Resvg(sheetToSvg(inch), { dpi: 96, font: { loadSystemFonts: false } })
    // resvg counts whole pixels.
    expect(read.width).toBe(Math.round(width))
    expect(read.height).toBe(Math.round(height))
    // The half inch to the square and the inch of its side.
    const drawn = read.render()
    const inked = (x: number, y: number): boolean => drawn.pixels[(y * drawn.width + x) * 4 + 3] === 255
    expect([47, 48, 143, 144].map(x => inked(x, 100))).toEqual([false, true, true, false])
    expect([47, 48, 143, 144].map(y => inked(100, y))).toEqual([false, true, true, false])
  })
})
