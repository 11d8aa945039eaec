import { existsSync, mkdirSync, mkdtempSync, rmSync, utimesSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout } from 'node:timers/promises'
import { afterAll, describe, expect, it } from 'vitest'
import { type FileSystem, machineFiles } from '../../../src/files/folder/file-system.js'
import { type HeldLock, withLock } from '../../../src/files/folder/folder-lock.js'
import { beginRun, type Host, thisHost } from '../../../src/files/folder/running-process.js'
import { systemError, troubledFiles } from './troubled-files.js'

const times = { poll: 5, beat: 20, endedAfter: 100, silentAfter: 400, longest: 1500 }
const anotherMachine = '00000000-1-abcdefghij'
/** No process has a number beyond the largest that systems give. */
const endedHere = `${thisHost.machine}-99999999-abcdefghij`

const home = mkdtempSync(join(tmpdir(), 'oaktag-locks-'))
afterAll(() => rmSync(home, { recursive: true }))

const emptyFolder = () => mkdtempSync(join(home, 'folder-'))

function lockIn(folder: string, change: { host?: Host; files?: FileSystem } = {}) {
  const { host = thisHost, files = machineFiles } = change
  const lock = join(folder, 'lock')
  const { name, end } = beginRun(host)
  const request = { lock, aside: `${lock}.${name}`, run: name, host, files, times }
  return {
    run: name,
    take: async <T>(task: (held: HeldLock) => Promise<T>) => {
      try {
        return await withLock(request, task)
      } finally {
        end()
      }
    },
  }
}

function leaveLock(folder: string, run: string): string {
  mkdirSync(join(folder, 'lock'))
  writeFileSync(join(folder, 'lock', run), '')
  return folder
}

// At one time: most of what these tests take is waiting.
describe.concurrent('the lock of a plan’s folder', () => {
  it.each([
    [
      'an empty file, as a kill in the midst of making a lock might leave',
      (folder: string) => writeFileSync(join(folder, 'lock'), ''),
    ],
    ['a file of another kind', (folder: string) => writeFileSync(join(folder, 'lock'), 'somehost 4711.1')],
    ['an empty folder', (folder: string) => mkdirSync(join(folder, 'lock'))],
    ['a run whose process has ended', (folder: string) => leaveLock(folder, endedHere)],
    [
      'a run of another machine that has fallen silent',
      (folder: string) => leaveLock(folder, anotherMachine),
    ],
    [
      'a run with this process’s own number in another container',
      (folder: string) => leaveLock(folder, `${thisHost.machine}-${process.pid}-abcdefghij`),
    ],
    ['a file that no run is called', (folder: string) => leaveLock(folder, 'notes.txt')],
  ])('is taken over from %s', async (_, leave) => {
    const folder = emptyFolder()
    leave(folder)
    const done = await lockIn(folder).take(async () => 'done')
    expect([done, existsSync(join(folder, 'lock'))]).toEqual(['done', false])
  })

  it('held by a run under way keeps others waiting until it is let go', async () => {
    const folder = emptyFolder()
    const order: string[] = []
    const held = lockIn(folder).take(async () => {
      await setTimeout(200)
      order.push('first')
    })
    await setTimeout(30)
    await lockIn(folder).take(async () => void order.push('second'))
    await held
    expect(order).toEqual(['first', 'second'])
  })

  it('is not taken from a run that cannot be judged, as long as it says that it is there', async () => {
    const folder = leaveLock(emptyFolder(), anotherMachine)
    const beating = setInterval(() => {
      const now = new Date()
      utimesSync(join(folder, 'lock', anotherMachine), now, now)
    }, 20)
    try {
      const waiting = lockIn(folder).take(async () => 'done')
      await expect(waiting).rejects.toThrow(join(folder, 'lock'))
    } finally {
      clearInterval(beating)
    }
  })

  it('is said to be lost by a run that was taken for ended', async () => {
    const folder = emptyFolder()
    // It holds the lock and says nothing: its beats do not reach the disk.
    const silent = troubledFiles(change => {
      if (change === 'touch') throw systemError('EIO')
    })
    const lost = lockIn(folder, { files: silent }).take(async held => {
      const before = await held.isOurs()
      await setTimeout(900)
      return [before, await held.isOurs()]
    })
    await setTimeout(30)
    await lockIn(folder).take(async () => setTimeout(600))
    expect(await lost).toEqual([true, false])
  })

  it('is held by one of many at a time, whoever is killed', { timeout: 20_000 }, async () => {
    const folder = leaveLock(emptyFolder(), endedHere)
    let inside = 0
    let most = 0
    const runs = Array.from({ length: 12 }, (_, index) =>
      lockIn(folder, { host: { ...thisHost, machine: `3333333${index % 3}` } }).take(async () => {
        inside += 1
        most = Math.max(most, inside)
        await setTimeout(10)
        inside -= 1
      }),
    )
    await Promise.all(runs)
    expect([most, existsSync(join(folder, 'lock'))]).toEqual([1, false])
  })

  it('is let go when the task fails', async () => {
    const folder = emptyFolder()
    const failing = lockIn(folder).take(() => Promise.reject(new Error('no room')))
    await expect(failing).rejects.toThrow('no room')
    expect(existsSync(join(folder, 'lock'))).toBe(false)
  })

  it('that cannot be made leaves nothing behind', async () => {
    for (const failing of ['makeFolder', 'write', 'rename'] as const) {
      const folder = emptyFolder()
      const files = troubledFiles(change => {
        if (change === failing) throw systemError('ENOSPC')
      })
      await expect(lockIn(folder, { files }).take(async () => 'done')).rejects.toThrow('ENOSPC')
      expect(await machineFiles.list(folder)).toEqual([])
    }
  })
})
