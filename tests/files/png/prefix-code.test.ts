import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { codeLengths, codesOf } from '../../../src/files/png/prefix-code.js'

const share = (lengths: Uint8Array): number =>
  lengths.reduce((sum, length) => sum + (length === 0 ? 0 : 2 ** -length), 0)

describe('codes for symbols', () => {
  it('are shorter for what comes oftener, and leave nothing over (Kraft 1949)', () => {
    fc.assert(
      fc.property(fc.array(fc.nat(1_000_000), { minLength: 2, maxLength: 286 }), weights => {
        fc.pre(weights.filter(weight => weight > 0).length > 1)
        const lengths = codeLengths(Uint32Array.from(weights))
        expect(share(lengths)).toBe(1)
        for (const [symbol, weight] of weights.entries()) expect(lengths[symbol] === 0).toBe(weight === 0)
        const byWeight = [...weights.keys()].filter(symbol => weights[symbol]! > 0)
        byWeight.sort((a, b) => weights[b]! - weights[a]! || lengths[a]! - lengths[b]!)
        for (const [index, symbol] of byWeight.entries())
          if (index > 0) expect(lengths[symbol]!).toBeGreaterThanOrEqual(lengths[byWeight[index - 1]!]!)
      }),
      { numRuns: 300 },
    )
  })

  it('are never longer than deflate takes, however uneven the weights: Fibonacci numbers need the longest', () => {
    const weights = new Uint32Array(40).fill(1)
    for (let index = 2; index < 40; index++) weights[index] = weights[index - 1]! + weights[index - 2]!
    const lengths = codeLengths(weights)
    expect(Math.max(...lengths)).toBeLessThanOrEqual(15)
    expect(share(lengths)).toBe(1)
  })

  it('are numbered as in the example of RFC 1951, §3.2.2, first bit lowest', () => {
    const lengths = Uint8Array.of(3, 3, 3, 3, 3, 2, 4, 4)
    const written = [...codesOf(lengths)].map((code, symbol) =>
      [...code.toString(2).padStart(lengths[symbol]!, '0')].reverse().join(''),
    )
    expect(written).toEqual(['010', '011', '100', '101', '110', '00', '1110', '1111'])
  })
})
