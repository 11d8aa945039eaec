import { spawnSync } from 'node:child_process'
import { existsSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { withLock } from '../../../src/files/folder/folder-lock.js'
import { beginRun, endRun, machine } from '../../../src/files/folder/running-process.js'
import { folderWith } from '../../pipeline/plan-folder.js'

/** A process that has ended, so that no process has its number. */
function deadProcess(): number {
  return spawnSync(process.execPath, ['-e', '']).pid
}

describe('the lock of a plan’s folder', () => {
  it('left by a run that has died is broken at once', { timeout: 10_000 }, async () => {
    const lock = join(folderWith({}), 'lock')
    writeFileSync(lock, `${machine} ${deadProcess()}.1`)
    const run = beginRun()
    const done = await withLock(lock, run, async () => 'done')
    endRun(run)
    expect([done, existsSync(lock)]).toEqual(['done', false])
  })

  it('held by a run under way keeps others waiting until it is let go', async () => {
    const lock = join(folderWith({}), 'lock')
    const [first, second] = [beginRun(), beginRun()]
    const order: string[] = []
    let letGo = (): void => undefined
    const held = withLock(lock, first, async () => {
      await new Promise<void>(resolve => {
        letGo = resolve
      })
      order.push('first')
    })
    const waiting = withLock(lock, second, async () => {
      order.push('second')
    })
    await new Promise(resolve => setTimeout(resolve, 100))
    letGo()
    await Promise.all([held, waiting])
    for (const run of [first, second]) endRun(run)
    expect(order).toEqual(['first', 'second'])
  })

  it('is let go when the task fails', async () => {
    const lock = join(folderWith({}), 'lock')
    const run = beginRun()
    await expect(withLock(lock, run, () => Promise.reject(new Error('no room')))).rejects.toThrow('no room')
    endRun(run)
    expect(existsSync(lock)).toBe(false)
  })
})
