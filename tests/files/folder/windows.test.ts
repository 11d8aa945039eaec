import { readdirSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { patientFiles } from '../../../src/files/folder/patient-files.js'
import { writePlan } from '../../../src/files/write-plan.js'
import { folderWith } from '../../pipeline/plan-folder.js'
import { item, plan } from '../marsh-sheets.js'
import { type Change, systemError, troubledFiles } from './troubled-files.js'

/** Files as Windows keeps them: what the condition says is held open by another program. */
function windows(isHeld: (change: Change, path: string) => string | undefined) {
  return troubledFiles((change, path) => {
    const code = isHeld(change, path)
    if (code !== undefined) throw systemError(code, change === 'rename' ? 'rename' : 'unlink')
  }, 'windows')
}

const request = (outFolder: string, stem = 'marsh') => ({
  printed: plan({ stem, items: [item()] }),
  outFolder,
  formats: ['svg'] as const,
  dpi: 50,
  jobs: 1,
  version: '0.1.0',
})

/** A clock on which waiting takes no time, and how long was waited by it. */
function quickClock() {
  let waitedMs = 0
  return {
    wait: async (ms: number) => {
      waitedMs += ms
    },
    waitedMs: () => waitedMs,
  }
}

describe('on Windows', () => {
  it.each(['EPERM', 'EACCES', 'EBUSY'])(
    'a file that is let go within seconds (%s) is waited for',
    async code => {
      const out = folderWith({})
      await writePlan(request(out))
      let refusals = 0
      const files = windows((change, path) =>
        change === 'rename' && path.endsWith('marsh') && refusals++ < 3 ? code : undefined,
      )
      expect(await writePlan({ ...request(out), files })).toMatchObject({ ok: true, problems: [] })
      expect([refusals, readdirSync(out)]).toEqual([4, ['marsh']])
    },
  )

  it('a set that a viewer holds open stays, and what to do is said', async () => {
    const out = folderWith({})
    const { wait, waitedMs } = quickClock()
    await writePlan(request(out))
    const files = windows((change, path) =>
      change === 'rename' && path.endsWith('marsh') ? 'EPERM' : undefined,
    )
    const written = await writePlan({ ...request(out), files, wait })
    expect(waitedMs()).toBe(4000)
    expect(written.problems.map(({ message, advice }) => [message, advice])).toEqual([
      [
        'a file of the last set is open in another program',
        'Close it and run again. The last set is as it was.',
      ],
    ])
    expect(readdirSync(out)).toEqual(['marsh'])
    expect((await writePlan(request(out))).ok).toBe(true)
  })

  it('an old set that cannot be removed yet is removed by a later run', async () => {
    const out = folderWith({})
    const { wait, waitedMs } = quickClock()
    await writePlan(request(out))
    const files = windows((change, path) =>
      change === 'removeFolder' && path.endsWith('.gone') ? 'EBUSY' : undefined,
    )
    const written = await writePlan({ ...request(out), files, wait })
    expect(waitedMs()).toBe(4000)
    expect([written.ok, written.problems.map(({ severity }) => severity)]).toEqual([true, ['warning']])
    expect(readdirSync(out)).toHaveLength(2)
    expect(await writePlan(request(out))).toMatchObject({ ok: true, problems: [] })
    expect(readdirSync(out)).toEqual(['marsh'])
  })

  it('a folder that nobody may write to is told as such', async () => {
    const files = troubledFiles(change => {
      if (change === 'makeFolder') throw systemError('EPERM', 'mkdir')
    }, 'windows')
    const written = await writePlan({ ...request(folderWith({})), files })
    expect(written.problems.map(({ message }) => message)).toEqual(['this folder cannot be written to'])
  })

  it.each(['con', 'CON', 'nul.week-3', 'com1', 'LPT9', 'week.', 'what?', 'a:b'])(
    'a plan called %s is refused, since no folder can be',
    async stem => {
      const out = folderWith({})
      const files = windows(() => undefined)
      const written = await writePlan({ ...request(out, stem), files })
      expect(written.problems.map(({ message }) => message)).toEqual([
        `“${stem}” cannot be the name of a folder`,
      ])
      expect(readdirSync(out)).toEqual([])
    },
  )

  it('paths longer than its programs open are written, and told', async () => {
    const deep = join(
      folderWith({}),
      ...Array.from({ length: 6 }, () => 'sheets for the children of Room 7 in spring'),
    )
    const written = await writePlan({ ...request(deep), files: windows(() => undefined) })
    expect([written.ok, written.problems.map(({ severity }) => severity)]).toEqual([true, ['warning']])
    expect((await writePlan(request(deep))).problems).toEqual([])
  })

  it('names with spaces, and those that only begin as a device does, are folders like any other', async () => {
    for (const stem of ['week 3', 'console', 'nullarbor', 'com10']) {
      const out = folderWith({})
      expect(
        (await writePlan({ ...request(join(out, 'my sheets'), stem), files: windows(() => undefined) })).ok,
      ).toBe(true)
      expect(readdirSync(join(out, 'my sheets'))).toEqual([stem])
    }
  })
})

describe('patience', () => {
  it('is over after four seconds, and is none of it spent on what will not pass', async () => {
    const folder = folderWith({})
    for (const [kind, code, waits] of [
      ['windows', 'EPERM', 40],
      ['posix', 'EBUSY', 40],
      ['posix', 'EPERM', 0],
      ['windows', 'ENOSPC', 0],
    ] as const) {
      let waited = 0
      const files = troubledFiles(() => {
        throw systemError(code)
      }, kind)
      const patient = patientFiles(files, async () => {
        waited += 1
      })
      await expect(patient.rename(join(folder, 'a'), join(folder, 'b'))).rejects.toThrow(code)
      expect([kind, code, waited]).toEqual([kind, code, waits])
    }
  })
})
