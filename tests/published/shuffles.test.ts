import { describe, expect, it } from 'vitest'
import { generatorFor, hashFnv1a64, shuffle, splitMix64, xoshiro128StarStar } from '../../src/sets/random.js'

describe('the generator, against its authors’ reference code', () => {
  // Outputs of Blackman and Vigna's xoshiro128starstar.c (prng.di.unimi.it) from state 1, 2, 3, 4, as reproduced in
  // the tests of the Rust crate rand_xoshiro.
  it('gives the reference outputs of xoshiro128** from the state 1, 2, 3, 4', () => {
    const { next } = xoshiro128StarStar([1, 2, 3, 4])
    expect(Array.from({ length: 10 }, next)).toEqual([
      11520, 0, 5927040, 70819200, 2031721883, 1637235492, 1287239034, 3734860849, 3729100597, 4258142804,
    ])
  })

  // Outputs of Vigna's splitmix64.c from seed 1234567, as widely reproduced (from memory, no source at hand).
  it('gives the reference outputs of SplitMix64 from the seed 1234567', () => {
    const next = splitMix64(1234567n)
    expect([next(), next(), next()]).toEqual([
      6457827717110365317n,
      3203168211198807973n,
      9817491932198370423n,
    ])
  })

  // Test vectors of the FNV authors, Fowler, Noll and Vo (from memory, no source at hand).
  it.each([
    ['', 0xcbf29ce484222325n],
    ['a', 0xaf63dc4c8601ec8cn],
    ['foobar', 0x85944171f73967e8n],
  ])('hashes "%s" as FNV-1a does', (text, hash) => {
    expect(hashFnv1a64(text)).toBe(hash)
  })
})

describe('shuffling (Fisher and Yates)', () => {
  // Chi-square with 23 degrees of freedom: the 1 % point is 41.638 and the 99 % point 10.196 (from memory, as in
  // any table). A fixed seed makes the outcome a fact and not a chance.
  it('gives each of the 24 orders of four cards equally often', () => {
    const generator = generatorFor(1, 'orders of four cards')
    const rounds = 24_000
    const seen = new Map<string, number>()
    for (let round = 0; round < rounds; round++) {
      const order = shuffle(['reed', 'marsh', 'heron', 'mud'], generator).join(' ')
      seen.set(order, (seen.get(order) ?? 0) + 1)
    }
    const expected = rounds / 24
    const chiSquare = [...seen.values()].reduce((sum, count) => sum + (count - expected) ** 2 / expected, 0)
    expect(seen.size).toBe(24)
    expect(chiSquare).toBeLessThan(41.638)
    expect(chiSquare).toBeGreaterThan(10.196)
  })

  it('chooses below a limit that does not divide 2^32 without favouring any number', () => {
    // 3 × 2^30 leaves a quarter of the 32-bit values over: a remainder without drawing again would give the lowest
    // third half of all draws.
    const generator = generatorFor(1, 'limits')
    const limit = 3 * 2 ** 30
    const draws = 30_000
    const thirds = [0, 0, 0]
    for (let draw = 0; draw < draws; draw++) thirds[Math.floor((generator.below(limit) / limit) * 3)]!++
    const expected = draws / 3
    const chiSquare = thirds.reduce((sum, count) => sum + (count - expected) ** 2 / expected, 0)
    // Two degrees of freedom: the 1 % point is −2 ln 0.01 = 9.210.
    expect(chiSquare).toBeLessThan(9.21)
  })
})
