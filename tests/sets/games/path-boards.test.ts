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
        const path = dealPath({ words, spaces, faces: 6 }, generatorFor(seed, 'path'))
        const counts = Array.from({ length: words }, (_, word) => path.filter(space => space === word).length)
        expect(path).toHaveLength(spaces)
        expect(Math.max(...counts) - Math.min(...counts)).toBeLessThanOrEqual(1)
      }),
      { numRuns: 1000 },
    )
  })

  it('keeps equal words at least two thirds of the list apart', () => {
    fc.assert(
      fc.property(any, ({ words, spaces, seed }) => {
        const path = dealPath({ words, spaces, faces: 6 }, generatorFor(seed, 'path'))
        const gaps = path.flatMap((word, space) => {
          const next = path.indexOf(word, space + 1)
          return next >= 0 ? [next - space] : []
        })
        expect(Math.min(...gaps)).toBeGreaterThanOrEqual(leastPathGap(words, 6))
      }),
      { numRuns: 1000 },
    )
  })

  it('has no word twice within a throw, where there are as many words as a throw has numbers', () => {
    fc.assert(
      fc.property(any, fc.integer({ min: 3, max: 10 }), ({ words, spaces, seed }, faces) => {
        const path = dealPath({ words, spaces, faces }, generatorFor(seed, 'path'))
        const reach = Math.min(words, faces)
        const throws = path.slice(0, Math.max(0, path.length + 1 - reach))
        const different = throws.map((_, space) => new Set(path.slice(space, space + reach)).size)
        expect(different.filter(size => size !== reach)).toEqual([])
      }),
      { numRuns: 1000 },
    )
  })

  it('does not go through the words in the same order each time', () => {
    const path = dealPath({ words: 10, spaces: 30, faces: 6 }, generatorFor(12, 'path'))
    expect(path.slice(0, 10)).not.toEqual(path.slice(10, 20))
  })

  it('needs a word', () => {
    expect(() => dealPath({ words: 0, spaces: 5, faces: 6 }, generatorFor(1, 'path'))).toThrow(RangeError)
  })
})

describe('path boards', () => {
  const set = pathBoards({
    words: wordsByHand('reed', 'mud', 'pond', 'frog'),
    spaces: 12,
    boards: 3,
    copies: 1,
    faces: 6,
    players: 3,
    seed: 12,
    label: 'path',
  })

  it('hold their spaces in one row, each board in its own way', () => {
    expect(set.cards.map(card => card.id)).toEqual(['board-01', 'board-02', 'board-03'])
    expect(set.cards.every(card => card.cells!.length === 1 && card.cells![0]!.length === 12)).toBe(true)
    const paths = set.cards.map(card => card.words.map(word => word.text).join())
    expect(new Set(paths).size).toBe(3)
  })

  const fitted = (change: Partial<Parameters<typeof pathBoards>[0]>) =>
    pathBoards({
      words: wordsByHand('reed', 'mud', 'pond', 'frog'),
      spaces: 26,
      boards: 2,
      copies: 2,
      faces: 6,
      players: 3,
      seed: 12,
      label: 'path',
      ...change,
    })

  it('copy each board with all that is on it', () => {
    const { cards } = fitted({})
    expect(cards.map(({ id }) => id)).toEqual(['board-01', 'board-02', 'board-01-copy-2', 'board-02-copy-2'])
    expect(cards[2]!.words).toEqual(cards[0]!.words)
  })

  it('tell a machine the same jumps as the board has, and the turns that they make', () => {
    const { track, answerData } = fitted({ minutes: 15, boards: 1 })
    expect(track.jumps.length).toBeGreaterThan(0)
    expect(answerData).toMatchObject({
      jumps: track.jumps,
      expectedTurns:
        Math.round(expectedTurns({ finish: 27, faces: 6, jumps: track.jumps, ending: 'over' }) * 100) / 100,
    })
  })

  it('have the finish met exactly where a game could not last long enough otherwise, and nowhere else', () => {
    expect(fitted({ minutes: 15 }).track.ending).toBe('over')
    expect(fitted({ minutes: 15, finish: 'exact' }).track.ending).toBe('exact')
    const long = { spaces: 8, minutes: 9 }
    expect(fitted(long).track.ending).toBe('exact')
    expect(fitted({ ...long, finish: 'over' }).track.ending).toBe('over')
  })

  it('have a grid with each number once in every row and column', () => {
    const { numbers } = fitted({ faces: 5 }).track
    const sorted = [1, 2, 3, 4, 5]
    for (const row of numbers) expect(row.toSorted()).toEqual(sorted)
    for (const [column] of sorted.entries())
      expect(numbers.map(row => row[column]!).toSorted()).toEqual(sorted)
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
