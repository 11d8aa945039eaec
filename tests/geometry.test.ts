import { describe, expect, it } from 'vitest'
import { sayMm, saySize } from '../src/geometry.js'

describe('a length in words', () => {
  it.each([
    [64.85, '64.9'],
    [259.4 / 4, '64.9'],
    [64.84, '64.8'],
    [67.733333, '67.7'],
    [63, '63'],
    [0.04, '0'],
    [99.96, '100'],
  ])('%d mm is told as %s', (mm, told) => {
    expect(sayMm(mm)).toBe(told)
  })

  it('makes a size', () => {
    expect(saySize({ widthMm: 63.5, heightMm: 88.9 })).toBe('63.5 × 88.9 mm')
  })
})
