import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { parseLength, parseSize } from '../../../src/plan/values/lengths.js'

const amount = fc.double({ min: 0.001, max: 1000, noNaN: true }).map(value => Number(value.toFixed(3)))

describe('a length', () => {
  it.each([
    ['6', 6],
    ['6 mm', 6],
    ['.5 mm', 0.5],
    ['6.', 6],
    ['1.2 cm', 12],
    ['1 in', 25.4],
    ['0.25in', 6.35],
    ['1/4 in', 6.35],
    ['2 1/2 inches', 63.5],
    ['2½ in', 63.5],
    ['½"', 12.7],
    ['72 pt', 25.4],
    ['18 PT', 6.35],
    ['0', 0],
  ])('%s is %d mm', (text, mm) => {
    expect(parseLength(text)).toBeCloseTo(mm, 10)
  })

  it.each([
    '',
    'mm',
    'six mm',
    '-3 mm',
    '1,5 cm',
    '3 ft',
    '1/0 in',
    '1e3',
    '0x10',
    'NaN',
    'Infinity',
    '3 mm 4',
    '..5',
  ])('%j is none', text => {
    expect(parseLength(text)).toBeNull()
  })

  it('survives being written down, in every unit', () => {
    const units = [
      ['mm', 1],
      ['cm', 10],
      ['in', 25.4],
      ['pt', 25.4 / 72],
    ] as const
    fc.assert(
      fc.property(amount, fc.constantFrom(...units), fc.constantFrom('', ' '), (value, [unit, mm], space) => {
        expect(parseLength(`${value}${space}${unit}`)).toBeCloseTo(value * mm, 8)
      }),
    )
  })
})

describe('a size', () => {
  it.each([
    ['63 x 88 mm', 63, 88],
    ['63mm x 88mm', 63, 88],
    ['63x88', 63, 88],
    ['6.3 cm × 88 mm', 63, 88],
    ['2.5 x 3.5 in', 63.5, 88.9],
    ['2.5in X 3.5in', 63.5, 88.9],
    ['2 1/2 x 3 1/2 in', 63.5, 88.9],
  ])('%s is %d by %d mm', (text, widthMm, heightMm) => {
    expect(parseSize(text)?.widthMm).toBeCloseTo(widthMm, 10)
    expect(parseSize(text)?.heightMm).toBeCloseTo(heightMm, 10)
  })

  it.each(['63', '63 x', 'x 88', '63 x 88 x 2 mm', '63 by 88', 'a x b'])('%j is none', text => {
    expect(parseSize(text)).toBeNull()
  })

  it('survives being written down', () => {
    fc.assert(
      fc.property(amount, amount, (width, height) => {
        expect(parseSize(`${width} x ${height} mm`)).toEqual({ widthMm: width, heightMm: height })
      }),
    )
  })
})
