import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  pathText,
  polygon,
  rectangle,
  scaleCommands,
  thousandths,
} from '../../../src/pieces/art/path-text.js'

describe('numbers in path data', () => {
  it.each([
    [0, '0'],
    [-0, '0'],
    [-0.0004, '0'],
    [1, '1'],
    [-1.5, '-1.5'],
    [0.05, '0.05'],
    [12.3456, '12.346'],
    [-0.004, '-0.004'],
  ])('%d is %s', (mm, text) => {
    expect(thousandths(mm)).toBe(text)
  })

  it('read back as the number, rounded to a thousandth', () => {
    fc.assert(
      fc.property(fc.double({ min: -2000, max: 2000, noNaN: true }), mm => {
        expect(Number(thousandths(mm))).toBeCloseTo(Math.round(mm * 1000) / 1000, 9)
        expect(thousandths(mm)).toMatch(/^-?\d+(\.\d{1,3})?$/)
      }),
      { seed: 3 },
    )
  })
})

describe('paths', () => {
  it('are absolute commands, closed where they bound an area', () => {
    expect(pathText(rectangle(1, 2, 4, 3))).toBe('M1 2L4 2L4 3L1 3Z')
    expect(
      pathText(
        polygon([
          [0, 0],
          [1, 0],
          [0, 0.5],
        ]),
      ),
    ).toBe('M0 0L1 0L0 0.5Z')
  })

  it('grow and move', () => {
    expect(pathText(scaleCommands(rectangle(0, 0, 1, 1), 2, { xMm: 10, yMm: -1 }))).toBe(
      'M10 -1L12 -1L12 1L10 1Z',
    )
  })
})
