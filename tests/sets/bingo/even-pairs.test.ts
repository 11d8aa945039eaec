import { describe, expect, it } from 'vitest'
import { chooseEvenSubsets, type SubsetsWanted } from '../../../src/sets/bingo/even-pairs.js'
import { binomial, everySubset } from '../../../src/sets/bingo/subsets.js'
import { generatorFor } from '../../../src/sets/random.js'

/** On how many boards each pair of words meets, the least and the most. */
function meetings(wanted: SubsetsWanted, seed: number): [number, number] {
  const boards = chooseEvenSubsets(wanted, generatorFor(seed, 'pairs')).map(board => new Set(board))
  const counts: number[] = []
  for (let a = 0; a < wanted.words; a++) {
    for (let b = a + 1; b < wanted.words; b++) {
      counts.push(boards.filter(board => board.has(a) && board.has(b)).length)
    }
  }
  return [Math.min(...counts), Math.max(...counts)]
}

describe('pairs of words', () => {
  // Balanced designs that exist, each pair meeting λ = r(k − 1)/(v − 1) times: the projective planes of order 2 and 3
  // and the affine plane of order 3 (Colbourn and Dinitz, Handbook of Combinatorial Designs, from memory).
  it.each([
    { name: 'projective plane of order 2', words: 7, size: 3, boards: 7, meets: 1 },
    { name: 'affine plane of order 3', words: 9, size: 3, boards: 12, meets: 1 },
    { name: 'projective plane of order 3', words: 13, size: 4, boards: 13, meets: 1 },
  ])('meet exactly $meets time where the boards can be a $name', ({ words, size, boards, meets }) => {
    for (const seed of [1, 2, 3]) expect(meetings({ words, size, boards }, seed)).toEqual([meets, meets])
  })

  // λ = 15.789 and 15.862: 15 or 16 would be ideal.
  it('meet on 15 or 16 of 25 boards of 16 from 20 words', () => {
    for (const seed of [1, 2, 3])
      expect(meetings({ words: 20, size: 16, boards: 25 }, seed)).toEqual([15, 16])
  })

  it('meet on 15 to 17 of 25 boards of 24 from 30 words', () => {
    for (const seed of [1, 2, 3])
      expect(meetings({ words: 30, size: 24, boards: 25 }, seed)).toEqual([15, 17])
  })

  it('meet equally often when every subset is a board', () => {
    expect(meetings({ words: 10, size: 9, boards: 20 }, 1)).toEqual([16, 16])
  })
})

describe('counting subsets', () => {
  it('is exact', () => {
    expect(binomial(75, 24)).toBe(25_778_699_578_994_555_700n)
    expect(binomial(5, 6)).toBe(0n)
  })

  it('lists each of them once', () => {
    expect(everySubset(4, 2)).toEqual([
      [0, 1],
      [0, 2],
      [0, 3],
      [1, 2],
      [1, 3],
      [2, 3],
    ])
    expect(everySubset(12, 4)).toHaveLength(Number(binomial(12, 4)))
  })
})
