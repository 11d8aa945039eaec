import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { changeLengths } from '../../../src/pieces/art/path-numbers.js'

describe('the lengths of a path', () => {
  it('are changed one by one, and told apart by their place', () => {
    const moved = changeLengths('M1 2L3.5 -4Z', (mm, index) => mm + (index % 2 === 0 ? 10 : 0.25))
    expect(moved).toBe('M11 2.25L13.5 -3.75Z')
  })

  it('may have exponents, signs and no leading nought, and run into one another', () => {
    expect(changeLengths('M-.5 2e-1L1e1-4', mm => mm * 2)).toBe('M-1 0.4L20-8')
  })

  it('are read as the language reads them', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: -2000, max: 2000, noNaN: true })), values => {
        const texts = [...values.map(String), ...values.map(value => value.toFixed(3))]
        const read: number[] = []
        changeLengths(texts.join(' '), mm => {
          read.push(mm)
          return 0
        })
        expect(read.map(value => value + 0)).toEqual(texts.map(text => Number(text) + 0))
      }),
      { seed: 5 },
    )
  })
})
