import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { expectedTurns, landing, type TrackRules } from '../../../src/sets/games/track-turns.js'
import { generatorFor } from '../../../src/sets/random.js'

const plain = { jumps: [], ending: 'over' } as const

describe('expected turns along a track', () => {
  it('are those of a track of two spaces and a die of two, solved by hand', () => {
    // From 1 every throw finishes: t1 = 1. From 0 half the throws come to 1, half to the finish: t0 = 1 + t1 / 2.
    expect(expectedTurns({ finish: 2, faces: 2, ...plain })).toBeCloseTo(1.5, 12)
  })

  it('count the throws that pass the finish where it must be met exactly', () => {
    // From 1 only a 1 finishes: t1 = 2. t0 = 1 + t1 / 2.
    expect(expectedTurns({ finish: 2, faces: 2, jumps: [], ending: 'exact' })).toBeCloseTo(2, 12)
  })

  it('follow a space that sends back, solved by hand', () => {
    // Space 1 sends back to 0: t0 = 1 + t0 / 2.
    expect(expectedTurns({ finish: 2, faces: 2, jumps: [{ from: 1, to: 0 }], ending: 'over' })).toBeCloseTo(
      2,
      12,
    )
  })

  it('are one where one throw always reaches the finish', () => {
    expect(expectedTurns({ finish: 1, faces: 6, ...plain })).toBeCloseTo(1, 12)
  })

  it('are infinite where no throw leads on', () => {
    const jumps = [1, 2].map(from => ({ from, to: 0 }))
    expect(expectedTurns({ finish: 3, faces: 2, jumps, ending: 'over' })).toBe(Number.POSITIVE_INFINITY)
  })

  it('agree with 20,000 counters sent along the track, within five standard errors', () => {
    const track = fc.record({
      finish: fc.integer({ min: 4, max: 30 }),
      faces: fc.integer({ min: 2, max: 6 }),
      ending: fc.constantFrom('over' as const, 'exact' as const),
      from: fc.integer({ min: 1, max: 28 }),
      to: fc.integer({ min: 1, max: 28 }),
    })
    fc.assert(
      fc.property(track, ({ from, to, ...rest }) => {
        fc.pre(from < rest.finish && to < rest.finish && from !== to && rest.faces > 2)
        const rules: TrackRules = { ...rest, jumps: [{ from, to }] }
        const turns = sentAlong(rules, 20_000)
        const mean = turns.reduce((sum, each) => sum + each, 0) / turns.length
        const variance = turns.reduce((sum, each) => sum + (each - mean) ** 2, 0) / turns.length
        const error = Math.sqrt(variance / turns.length)
        expect(Math.abs(mean - expectedTurns(rules))).toBeLessThanOrEqual(5 * error + 1e-9)
      }),
      { numRuns: 10, seed: 4 },
    )
  })
})

function sentAlong(rules: TrackRules, counters: number): readonly number[] {
  const die = generatorFor(1, 'die')
  return Array.from({ length: counters }, () => {
    let [space, turns] = [0, 0]
    while (space < rules.finish) {
      space = landing(space, die.below(rules.faces) + 1, rules)
      turns += 1
    }
    return turns
  })
}
