import { deflateSync, inflateSync } from 'node:zlib'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { runPacker } from '../../../src/files/png/run-packer.js'

type Runs = readonly (readonly [byte: number, count: number])[]

function packed(runs: Runs, packer = runPacker()): Buffer {
  for (const [byte, count] of runs) packer.run(byte, count)
  return packer.take()
}

const bytesOf = (runs: Runs): Buffer => Buffer.concat(runs.map(([byte, count]) => Buffer.alloc(count, byte)))

describe('a packer of runs', () => {
  it('gives back to zlib all that it was given, stream after stream', () => {
    const packer = runPacker()
    const run = fc.tuple(
      fc.integer({ min: 0, max: 255 }),
      fc.oneof(
        fc.integer({ min: 1, max: 6 }),
        fc.nat(3000).map(n => n + 1),
      ),
    )
    fc.assert(
      fc.property(fc.array(run, { minLength: 1, maxLength: 60 }), runs => {
        expect(inflateSync(packed(runs, packer)).equals(bytesOf(runs))).toBe(true)
      }),
      { numRuns: 300 },
    )
  })

  it('takes a run of every length up to two repeats', () => {
    const runs = Array.from({ length: 520 }, (_, index) => [index % 2, index + 1] as const)
    expect(inflateSync(packed(runs)).equals(bytesOf(runs))).toBe(true)
  })

  it('takes more than one block holds, and sums that go round often', () => {
    const runs = Array.from(
      { length: 200_000 },
      (_, index) => [(index * 89 + (index >> 7)) & 255, 1] as const,
    )
    expect(inflateSync(packed([...runs, [255, 5_000_000]])).length).toBe(5_200_000)
    expect(inflateSync(packed(runs)).equals(bytesOf(runs))).toBe(true)
  })

  it('packs a page of thin lines no larger than zlib does with the strategy for runs', () => {
    const runs = Array.from(
      { length: 3300 },
      (_, y) =>
        [
          [2, 1],
          [0, 600],
          [(y * 7) & 255, 1],
          [0, 1949],
        ] as const,
    ).flat()
    const zlibs = deflateSync(bytesOf(runs), { level: 1, strategy: 3 })
    expect(packed(runs).length).toBeLessThan(zlibs.length * 1.05)
  })
})
