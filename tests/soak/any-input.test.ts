import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { faultsOfReading, qualities, readings, tryToMake } from './any-input.js'
import { killOnce, pairInContainers, prepareGround } from './kills.js'
import { plans } from './models/plan-texts.js'

/** A small share of `npm run soak`, the same each time. */
const seed = 7

describe('whatever is given', () => {
  it('is read, or told with a place and advice', async () => {
    const property = fc.asyncProperty(readings, async trial => {
      expect(await faultsOfReading(trial)).toEqual([])
    })
    await fc.assert(property, { numRuns: 300, seed })
  })

  it.each(qualities)('makes a whole set or none: %s', async quality => {
    let made = 0
    const property = fc.asyncProperty(plans(quality), async folder => {
      const { faults, ok } = await tryToMake(folder)
      if (ok) made += 1
      expect(faults).toEqual([])
    })
    await fc.assert(property, { numRuns: 4, seed })
    if (quality === 'valid') expect(made).toBeGreaterThan(1)
  })
})

describe('real runs', () => {
  it('that are killed, or run in pairs with the same process numbers, leave a whole set and nothing else', async () => {
    const home = mkdtempSync(join(tmpdir(), 'oaktag-kills-'))
    try {
      const ground = prepareGround(home)
      expect((await killOnce(ground, { at: 'old', seen: 1 }, 0)).faults).toEqual([])
      expect((await pairInContainers(ground)) ?? []).toEqual([])
    } finally {
      rmSync(home, { recursive: true, force: true })
    }
  })
})
