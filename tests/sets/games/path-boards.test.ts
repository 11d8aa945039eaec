import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { dealPath, leastPathGap, pathBoards } from '../../../src/sets/games/path-boards.js'
import { expectedTurns } from '../../../src/sets/games/track-turns.js'
import { generatorFor } from '../../../src/sets/random.js'
import { wordsByHand } from '../words-by-hand.js'

describe('a path', () => {
  const any = fc.record({
    words: fc.integer({ min: 1, max: 25 }),
    spaces: fc.integer({ min: 0, max: 80 }),
    seed: fc.integer(),
  })

  it('uses every word equally often, give or take one', () => {
    fc.assert(
      fc.property(any, ({ words, spaces, seed }) => {
        const path = dealPath({ words, spaces }, generatorFor(seed, 'path'))
        const counts = Array.from({ length: words }, (_, word) => path.filter(space => space === word).length)
        expect(path).toHaveLength(spaces)
        expect(Math.max(...counts) - Math.min(...counts)).toBeLessThanOrEqual(1)
      }),
    )
  })

  it('keeps equal words at least two thirds of the list apart', () => {
    fc.assert(
      fc.property(any, ({ words, spaces, seed }) => {
        const path = dealPath({ words, spaces }, generatorFor(seed, 'path'))
        path.forEach((word, space) => {
          const next = path.indexOf(word, space + 1)
          if (next >= 0) expect(next - space).toBeGreaterThanOrEqual(leastPathGap(words))
        })
      }),
    )
  })

  it('does not go through the words in the same order each time', () => {
    const path = dealPath({ words: 10, spaces: 30 }, generatorFor(12, 'path'))
    expect(path.slice(0, 10)).not.toEqual(path.slice(10, 20))
  })

  it('needs a word', () => {
    expect(() => dealPath({ words: 0, spaces: 5 }, generatorFor(1, 'path'))).toThrow(RangeError)
  })
})

describe('path boards', () => {
  const set = pathBoards({
    words: wordsByHand('reed', 'mud', 'pond', 'frog'),
    spaces: 12,
    boards: 3,
    seed: 12,
    label: 'path',
  })

  it('hold their spaces in one row, each board in its own way', () => {
    expect(set.cards.map(card => card.id)).toEqual(['board-01', 'board-02', 'board-03'])
    expect(set.cards.every(card => card.cells!.length === 1 && card.cells![0]!.length === 12)).toBe(true)
    const paths = set.cards.map(card => card.words.map(word => word.text).join())
    expect(new Set(paths).size).toBe(3)
  })

  it('tell a machine each board’s track, and how many throws of a die it takes', () => {
    const [first, ...others] = [set.answerData].flat()
    expect(others).toHaveLength(2)
    expect(first).toEqual({
      track: set.cards[0]!.words.map(word => word.text),
      jumps: [],
      faces: 6,
      finish: 'over',
      expectedTurns:
        Math.round(expectedTurns({ finish: 13, jumps: [], faces: 6, ending: 'over' }) * 100) / 100,
    })
  })
})
