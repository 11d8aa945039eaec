import { spawnSync } from 'node:child_process'
import { pathToFileURL } from 'node:url'
import { expect, it } from 'vitest'
import { buildFolder } from '../../src/installation.js'
import { collectSoonerFor, collectWhileWaiting } from '../../src/pipeline/collect-sooner.js'

it.each([
  ['at once where much is made', () => collectSoonerFor({ sheets: 1000 })],
  ['while a program waits', collectWhileWaiting],
])('collects garbage %s, and leaves nothing of it about', (_, collect) => {
  // What lies about from before would be taken for what is let go of here.
  collect()
  const before = process.memoryUsage().heapUsed
  const garbage = Array.from({ length: 200 }, () => new Array(20_000).fill(0.5))
  expect(garbage).toHaveLength(200)
  garbage.length = 0
  const full = process.memoryUsage().heapUsed
  expect(full - before).toBeGreaterThan(20 * 2 ** 20)
  collect()
  expect(process.memoryUsage().heapUsed).toBeLessThan(full - 20 * 2 ** 20)
  expect(globalThis.gc).toBe(undefined)
})

it('leaves what is new a megabyte for thirty boards, gives it more for a hundred, and some where much is made', () => {
  const module = pathToFileURL(`${buildFolder}/src/pipeline/collect-sooner.js`)
  const room = (of: string): number => {
    const program = `
      import { getHeapSpaceStatistics, setFlagsFromString } from 'node:v8'
      import { collectSoonerFor } from '${module}'
      setFlagsFromString('--semi-space-growth-factor=1')
      collectSoonerFor(${of})
      const held = []
      for (let index = 0; index < 1_500_000; index++) held.push({ index })
      const { space_size } = getHeapSpaceStatistics().find(({ space_name }) => space_name === 'new_space')
      console.log(space_size / 2 ** 20, held.length)`
    const { stdout } = spawnSync(process.execPath, ['--input-type=module', '-e', program], {
      encoding: 'utf8',
    })
    return Number(stdout.split(' ')[0])
  }
  expect(room('{ sheets: 30 }')).toBeLessThanOrEqual(2)
  expect(room('{ sheets: 100 }')).toBeGreaterThan(16)
  expect(room('{ words: 1000 }')).toBeLessThanOrEqual(16)
  expect(room('{ sheets: 1000 }')).toBeLessThanOrEqual(16)
})
