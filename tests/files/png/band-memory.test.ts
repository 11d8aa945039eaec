import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type BandKey, bandKey } from '../../../src/files/png/band-key.js'
import { bandMemory, type CodedBand } from '../../../src/files/png/band-memory.js'

function keyOf(numbers: readonly number[]): BandKey {
  const key = bandKey()
  key.begin()
  for (let at = 0; at < numbers.length; at += 3) key.add(numbers[at]!, numbers[at + 1]!, numbers[at + 2]!)
  return key
}

/** So many words of codes, by which it can be told from others. */
function bandOf(number: number, wordCount: number): CodedBand {
  const words = Int32Array.from({ length: wordCount + 3 }, (_, at) => number * 1000 + at)
  const sums = { count: 64 * number, sum: number, sums: number + 1 }
  return { words, start: 3, bitCount: wordCount * 32 - (number % 32), sums, met: number % 5 }
}

function told(band: CodedBand | undefined) {
  if (band === undefined) return undefined
  const { words, start, bitCount, sums, met } = band
  return { codes: [...words.subarray(start, start + Math.ceil(bitCount / 32))], bitCount, sums, met }
}

describe('bands that are kept', () => {
  it('are found again by their whole key', () => {
    const memory = bandMemory(2 ** 12)
    memory.keep(keyOf([1, 2, 3, 4, 5, 6]), bandOf(7, 10))
    expect(told(memory.find(keyOf([1, 2, 3, 4, 5, 6])))).toEqual(told(bandOf(7, 10)))
    expect(memory.find(keyOf([1, 2, 3]))).toBeUndefined()
    expect(memory.find(keyOf([1, 2, 3, 4, 5, 7]))).toBeUndefined()
  })

  it('are none of another key that has the same hash', () => {
    const memory = bandMemory(2 ** 12)
    memory.keep(keyOf([1, 2, 3]), bandOf(7, 10))
    const other = { ...keyOf([4, 5, 6]), hash: keyOf([1, 2, 3]).hash }
    expect(memory.find(other)).toBeUndefined()
    memory.keep(other, bandOf(8, 10))
    expect(told(memory.find(other))).toEqual(told(bandOf(8, 10)))
    expect(memory.find(keyOf([1, 2, 3]))).toBeUndefined()
  })

  it('stay while they are asked for, however many come and go', () => {
    const memory = bandMemory(2 ** 10)
    memory.keep(keyOf([1, 1, 1]), bandOf(1, 20))
    for (let number = 2; number < 100; number++) {
      memory.keep(keyOf([number, 1, 1]), bandOf(number, 20))
      expect(told(memory.find(keyOf([1, 1, 1])))).toEqual(told(bandOf(1, 20)))
    }
    expect(memory.find(keyOf([2, 1, 1]))).toBeUndefined()
  })

  it('are let go rather than mistaken, of whatever size they are', () => {
    const step = fc.record({ number: fc.integer({ min: 1, max: 20 }), looks: fc.boolean() })
    fc.assert(
      fc.property(fc.array(step, { minLength: 100, maxLength: 200 }), steps => {
        const memory = bandMemory(2 ** 9)
        const sizeOf = (number: number): number => (number === 13 ? 200 : 1 + ((number * 7) % 23))
        for (const { number, looks } of steps) {
          const key = keyOf([number, 0, -number])
          const found = told(memory.find(key))
          if (found !== undefined) expect(found).toEqual(told(bandOf(number, sizeOf(number))))
          else if (!looks) memory.keep(key, bandOf(number, sizeOf(number)))
        }
      }),
    )
  })
})
