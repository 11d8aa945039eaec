import { describe, expect, it } from 'vitest'
import { balancedLines } from '../../../src/pieces/text/balanced-lines.js'

/** Every character half an em wide: widths can be counted by hand. */
const measure = (text: string, sizeMm: number) => text.length * sizeMm * 0.5
const lines = (text: string, widthMm: number) => balancedLines(text, widthMm, { sizeMm: 4 }, measure)

describe('lines of about one width', () => {
  it('are as many as the text needs, and no longer than they must be', () => {
    expect(lines('it flies to the lamp at night', 40)).toEqual(['it flies to the', 'lamp at night'])
  })

  it('begin with no dot, however narrow they are', () => {
    expect(lines('At the bakery · Terns', 18)).toEqual(['At the', 'bakery ·', 'Terns'])
  })
})
