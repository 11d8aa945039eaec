import { expect, it } from 'vitest'
import { collectSoonerFor } from '../../src/pipeline/collect-sooner.js'

it('collects garbage at once where much is made, and leaves nothing of it about', () => {
  const before = process.memoryUsage().heapUsed
  const garbage = Array.from({ length: 200 }, () => new Array(20_000).fill(0.5))
  expect(garbage).toHaveLength(200)
  garbage.length = 0
  const full = process.memoryUsage().heapUsed
  expect(full - before).toBeGreaterThan(20 * 2 ** 20)
  collectSoonerFor({ sheets: 1000 })
  expect(process.memoryUsage().heapUsed).toBeLessThan(full - 20 * 2 ** 20)
  expect(globalThis.gc).toBe(undefined)
})
