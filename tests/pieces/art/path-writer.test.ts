import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { pathWriter } from '../../../src/pieces/art/path-writer.js'

const writer = pathWriter()

function written(mm: number): string {
  writer.number(mm)
  return writer.take()
}

describe('a length in path data', () => {
  it.each([
    [0, '0'],
    [-0, '0'],
    [-0.0004, '0'],
    [1, '1'],
    [-1.5, '-1.5'],
    [0.05, '0.05'],
    [0.105, '0.105'],
    [2.01, '2.01'],
    [12.3456, '12.346'],
    [-0.004, '-0.004'],
    [1189, '1189'],
  ])('%d is %s', (mm, text) => {
    expect(written(mm)).toBe(text)
  })

  it('is written as the shortest text of the number, rounded to a thousandth', () => {
    fc.assert(
      fc.property(fc.double({ min: -2000, max: 2000, noNaN: true }), mm => {
        expect(written(mm)).toBe(String(Math.round(mm * 1000) / 1000 + 0))
      }),
      { seed: 3 },
    )
  })
})

describe('a path writer', () => {
  it('gives what was written since it was last asked, however long', () => {
    for (let count = 0; count < 20_000; count++) {
      writer.character('M'.charCodeAt(0))
      writer.number(count / 8)
    }
    expect(writer.take()).toBe(Array.from({ length: 20_000 }, (_, count) => `M${count / 8}`).join(''))
    expect(writer.take()).toBe('')
  })
})
