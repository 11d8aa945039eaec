import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  chancesOnTheWay,
  chooseJumps,
  type JumpsWanted,
  minutesOf,
  mostJumps,
  roundsToFirst,
  SECONDS_A_TURN,
} from '../../../src/sets/games/track-length.js'
import { expectedTurns, type TrackRules } from '../../../src/sets/games/track-turns.js'
import { generatorFor } from '../../../src/sets/random.js'

const coin = { finish: 2, faces: 2, jumps: [], ending: 'over' } as const

describe('the chance to be on the way still', () => {
  it('is that of a track of two spaces and a die of two, by hand', () => {
    // Half the first throws come to the finish; from space 1 every throw does.
    expect(chancesOnTheWay(coin)).toEqual([1, 0.5, 0])
  })

  it('sums up to the expected turns, which another method gives', () => {
    const rules: TrackRules = { finish: 27, faces: 6, jumps: [{ from: 20, to: 4 }], ending: 'exact' }
    const sum = chancesOnTheWay(rules).reduce((all, chance) => all + chance, 0)
    expect(sum).toBeCloseTo(expectedTurns(rules), 6)
  })
})

describe('rounds until the first is at the finish', () => {
  it('are the turns of one where one plays alone', () => {
    expect(roundsToFirst(coin, 1)).toBeCloseTo(1.5, 12)
  })

  it('are fewer for two, by hand', () => {
    // Both are on the way after one round in a quarter of the games: 1 + 1/4.
    expect(roundsToFirst(coin, 2)).toBeCloseTo(1.25, 12)
  })

  it('take a turn of every player each', () => {
    expect(minutesOf(coin, 2)).toBeCloseTo((1.25 * 2 * SECONDS_A_TURN) / 60, 12)
  })
})

describe('spaces that send on or back', () => {
  const wanted = fc.record({
    finish: fc.integer({ min: 5, max: 60 }),
    faces: fc.integer({ min: 3, max: 10 }),
    ending: fc.constantFrom('over' as const, 'exact' as const),
    players: fc.integer({ min: 1, max: 6 }),
    count: fc.option(fc.integer({ min: 0, max: 20 }), { nil: undefined }),
    minutes: fc.option(fc.integer({ min: 2, max: 60 }), { nil: undefined }),
  })
  const chosen = (request: JumpsWanted, seed = 12) => chooseJumps(request, generatorFor(seed, 'jumps'))

  it('send a counter once, to no start and no finish, and let every game end', () => {
    fc.assert(
      fc.property(wanted, fc.integer(), (request, seed) => {
        const jumps = chosen(request, seed)
        const ends = jumps.flatMap(({ from, to }) => [from, to])
        expect(new Set(ends).size).toBe(ends.length)
        for (const space of ends) {
          expect(space).toBeGreaterThanOrEqual(1)
          expect(space).toBeLessThan(request.finish)
        }
        for (const { from, to } of jumps) expect(Math.abs(from - to)).toBeGreaterThanOrEqual(2)
        expect(Number.isFinite(expectedTurns({ ...request, jumps }))).toBe(true)
      }),
      { numRuns: 60 },
    )
  })

  it('make a game last as long as it should', () => {
    const track = { finish: 27, faces: 6, ending: 'over', players: 3 } as const
    for (const minutes of [8, 10, 12, 15])
      expect(
        Math.abs(minutesOf({ ...track, jumps: chosen({ ...track, minutes }) }, 3) - minutes),
      ).toBeLessThan(0.5)
  })

  it('are as many as asked, and half of them send on', () => {
    const jumps = chosen({ finish: 31, faces: 6, ending: 'over', players: 3, count: 6 })
    expect(jumps).toHaveLength(6)
    expect(jumps.filter(({ from, to }) => to > from)).toHaveLength(3)
  })

  it('are none where none are asked, whatever the time', () => {
    expect(chosen({ finish: 27, faces: 6, ending: 'over', players: 3, count: 0, minutes: 15 })).toEqual([])
  })

  it('are a quarter of the spaces at most', () => {
    expect(mostJumps(27)).toBe(6)
    expect(
      chosen({ finish: 27, faces: 6, ending: 'over', players: 3, count: 20 }).length,
    ).toBeLessThanOrEqual(6)
  })
})
