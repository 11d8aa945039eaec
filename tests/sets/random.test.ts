import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { generatorFor, shuffle } from '../../src/sets/random.js'

const firstFour = (seed: number, label: string): number[] => {
  const generator = generatorFor(seed, label)
  return Array.from({ length: 4 }, generator.next)
}

describe('a seeded stream of chance', () => {
  it('is the same for the same seed and label', () => {
    expect(firstFour(12, 'bingo')).toEqual(firstFour(12, 'bingo'))
  })

  it('is another for another seed', () => {
    expect(firstFour(12, 'bingo')).not.toEqual(firstFour(13, 'bingo'))
  })

  it('is another for another label', () => {
    expect(firstFour(12, 'bingo')).not.toEqual(firstFour(12, 'word-cards'))
  })

  it('refuses to choose from nothing', () => {
    expect(() => generatorFor(1, 'x').below(0)).toThrow(RangeError)
  })
})

describe('shuffle', () => {
  it('keeps every item, and leaves the list it was given alone', () => {
    fc.assert(
      fc.property(fc.array(fc.integer()), fc.integer(), (items, seed) => {
        const before = [...items]
        const shuffled = shuffle(items, generatorFor(seed, 'shuffle'))
        expect(items).toEqual(before)
        expect([...shuffled].sort((a, b) => a - b)).toEqual([...before].sort((a, b) => a - b))
      }),
    )
  })
})
