/**
 * Sources: ISO 216:2007, table 1 (A series, trimmed sizes) and its tolerances; ANSI/ASME Y14.1 (A 8.5 × 11 in,
 * B 11 × 17 in); Legal and index cards are US trade sizes (common practice, named in inches); 1 in = 25.4 mm
 * (international inch, 1959). Values read in the standards' published tables.
 */
import { describe, expect, it } from 'vitest'
import { mmToPixels } from '../../src/geometry.js'
import { paperNamed } from '../sheets/paper-named.js'

const iso216 = [
  ['a3', 297, 420],
  ['a4', 210, 297],
  ['a5', 148, 210],
  ['a6', 105, 148],
] as const

const inches = [
  ['letter', 8.5, 11],
  ['legal', 8.5, 14],
  ['tabloid', 11, 17],
  ['index-3x5', 3, 5],
  ['index-4x6', 4, 6],
  ['index-5x8', 5, 8],
] as const

describe('paper sizes', () => {
  it.each(iso216)('%s is %d × %d mm (ISO 216)', (name, widthMm, heightMm) => {
    expect(paperNamed(name)).toEqual({ name, widthMm, heightMm })
  })

  it.each(inches)('%s is %d × %d in', (name, width, height) => {
    const paper = paperNamed(name)!
    expect(paper.widthMm).toBeCloseTo(width * 25.4, 9)
    expect(paper.heightMm).toBeCloseTo(height * 25.4, 9)
  })

  it('follows the rule of ISO 216: A0 is 1 m² with sides as 1 to √2, each size half the one before, rounded to 1 mm', () => {
    const a0Width = 1000 * 2 ** -0.25
    for (const [name, widthMm, heightMm] of iso216) {
      const halvings = Number(name.slice(1))
      expect(Math.abs(widthMm - a0Width * 2 ** (-halvings / 2))).toBeLessThan(1)
      expect(Math.abs(heightMm - a0Width * 2 ** ((1 - halvings) / 2))).toBeLessThan(1)
    }
  })

  it('gives 2480 × 3508 pixels for A4 and 2550 × 3300 for Letter at 300 DPI', () => {
    const pixels = (name: string) => {
      const paper = paperNamed(name)!
      return [Math.round(mmToPixels(paper.widthMm, 300)), Math.round(mmToPixels(paper.heightMm, 300))]
    }
    expect(pixels('a4')).toEqual([2480, 3508])
    expect(pixels('letter')).toEqual([2550, 3300])
  })
})
