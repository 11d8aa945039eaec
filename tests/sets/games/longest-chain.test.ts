import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { longestChain } from '../../../src/sets/games/longest-chain.js'
import { generatorFor } from '../../../src/sets/random.js'

/** Every order of every part of up to seven things. */
function longestByTrial(count: number, follows: (from: number, to: number) => boolean): number {
  const longestFrom = (path: readonly number[]): number => {
    const ways = Array.from({ length: count }, (_, to) => to).filter(
      to => !path.includes(to) && (path.length === 0 || follows(path.at(-1)!, to)),
    )
    return Math.max(path.length, ...ways.map(to => longestFrom([...path, to])))
  }
  return longestFrom([])
}

const graphs = fc.integer({ min: 0, max: 7 }).chain(count =>
  fc.record({
    count: fc.constant(count),
    edges: fc.array(fc.nat(48), { maxLength: 20 }),
    seed: fc.integer(),
  }),
)

describe('the longest chain', () => {
  it('is as long as the longest of all orders', () => {
    fc.assert(
      fc.property(graphs, ({ count, edges, seed }) => {
        const follows = (from: number, to: number) => edges.includes(from * 7 + to)
        const { order, closed } = longestChain(count, follows, generatorFor(seed, 'chain'))
        expect(order).toHaveLength(longestByTrial(count, follows))
        expect(new Set(order).size).toBe(order.length)
        for (const [index, to] of order.entries())
          if (index > 0) expect(follows(order[index - 1]!, to)).toBe(true)
        if (closed) expect(follows(order.at(-1)!, order[0]!)).toBe(true)
      }),
    )
  })

  it('closes where one of its length does', () => {
    const round = (from: number, to: number) => to === (from + 1) % 5
    expect(longestChain(5, round, generatorFor(1, 'chain')).closed).toBe(true)
  })

  it('passes through two hundred things that all may follow one another', () => {
    const { order, closed } = longestChain(200, () => true, generatorFor(1, 'chain'))
    expect([order.length, closed]).toEqual([200, true])
  })
})
