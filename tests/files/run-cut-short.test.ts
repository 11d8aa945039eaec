import { mkdirSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { thisHost } from '../../src/files/folder/running-process.js'
import { type WriteRequest, writePlan } from '../../src/files/write-plan.js'
import { folderWith } from '../pipeline/plan-folder.js'
import { filesUntilKilled, Killed, systemError, troubledFiles } from './folder/troubled-files.js'
import { item, plan, sheet } from './marsh-sheets.js'

const blank = { pieces: [], cuts: [], furniture: [] }
const set = (title: string) =>
  plan({
    items: ['word-cards', 'bingo'].map(name => item({ name, sheets: [sheet({ ...blank, title })] })),
  })

const lockTimes = { poll: 1, beat: 50, endedAfter: 5, silentAfter: 2000, longest: 5000 }

function request(outFolder: string, title: string, change: Partial<WriteRequest> = {}): WriteRequest {
  return {
    printed: set(title),
    outFolder,
    formats: ['svg'],
    dpi: 50,
    jobs: 1,
    version: '0.1.0',
    lockTimes,
    ...change,
  }
}

function contentsOf(folder: string): Readonly<Record<string, string>> {
  const entries = readdirSync(folder, { recursive: true, withFileTypes: true })
  return Object.fromEntries(
    entries
      .filter(entry => entry.isFile())
      .map(entry => join(entry.parentPath, entry.name))
      .map(path => [path.slice(folder.length + 1), readFileSync(path, 'utf8')] as const)
      .sort(),
  )
}

async function madeApart(title: string): Promise<Readonly<Record<string, string>>> {
  const out = folderWith({})
  await writePlan(request(out, title))
  return contentsOf(join(out, 'marsh'))
}

/** A process that no system has any more. */
const endedHost = { ...thisHost, processId: 99_999_999 }

describe('a run that is killed at any of its changes to the disk', () => {
  it('leaves the old set or the new one whole, and nothing that the next run does not clear away', async () => {
    const [old, fresh] = [await madeApart('old'), await madeApart('new')]
    let kills = 0
    let caughtBetweenRenames = 0
    for (let killed = true; killed; kills++) {
      const out = folderWith({})
      await writePlan(request(out, 'old'))
      const dying = filesUntilKilled(kills)
      const run = writePlan(request(out, 'new', { files: dying.files, host: endedHost }))
      await run.catch((error: unknown) => {
        if (!(error instanceof Killed)) throw error
      })
      killed = dying.killed()
      if (!readdirSync(out).includes('marsh')) caughtBetweenRenames += 1
      else expect([old, fresh]).toContainEqual(contentsOf(join(out, 'marsh')))
      // The next run keeps one of the two items: what it takes over must be whole.
      const next = await writePlan(request(out, 'new', { only: ['bingo'] }))
      expect([kills, next.ok, next.problems, readdirSync(out)]).toEqual([kills, true, [], ['marsh']])
      const { 'word-cards/word-cards-01.svg': cards } = contentsOf(join(out, 'marsh'))
      expect([old, fresh].map(each => each['word-cards/word-cards-01.svg'])).toContain(cards)
    }
    expect(kills).toBeGreaterThan(30)
    expect(caughtBetweenRenames).toBe(1)
  })

  it('leaves nothing where there was no set before', async () => {
    for (let kills = 0, killed = true; killed; kills++) {
      const out = folderWith({})
      const dying = filesUntilKilled(kills)
      await writePlan(request(out, 'new', { files: dying.files, host: endedHost })).catch(() => undefined)
      killed = dying.killed()
      const next = await writePlan(request(out, 'new'))
      expect([kills, next.ok, next.problems, readdirSync(out)]).toEqual([kills, true, [], ['marsh']])
    }
  })

  it('keeps a teacher’s own file, whenever it is killed', async () => {
    for (let kills = 0, killed = true; killed; kills++) {
      const out = folderWith({})
      await writePlan(request(out, 'old'))
      mkdirSync(join(out, 'marsh', 'mine'))
      await troubledFiles(() => undefined).write(join(out, 'marsh', 'mine', 'notes.txt'), 'two boards more')
      const dying = filesUntilKilled(kills)
      await writePlan(request(out, 'new', { files: dying.files, host: endedHost })).catch(() => undefined)
      killed = dying.killed()
      const next = await writePlan(request(out, 'new'))
      expect(next.ok).toBe(true)
      const kept = contentsOf(join(out, 'marsh-other-files'))
      expect([kills, kept]).toEqual([kills, { 'mine/notes.txt': 'two boards more' }])
      expect(readdirSync(out)).toEqual(['marsh', 'marsh-other-files'])
    }
  })
})

describe('a disk that is full', () => {
  it.each(['from that change on', 'for that change alone'])(
    'at any change, %s, costs no set and blocks none',
    async how => {
      const [old, fresh] = [await madeApart('old'), await madeApart('new')]
      let failures = 0
      for (let at = 0, reached = true; reached; at++) {
        const out = folderWith({})
        await writePlan(request(out, 'old'))
        let count = 0
        reached = false
        const files = troubledFiles(change => {
          // Removing and the beat need no room.
          if (change.startsWith('remove') || change === 'touch') return
          const full = how === 'from that change on' ? count >= at : count === at
          count += 1
          if (!full) return
          reached = true
          throw systemError('ENOSPC')
        })
        const run = await writePlan(request(out, 'new', { files }))
        if (!run.ok) {
          failures += 1
          expect(run.problems.map(problem => problem.message)).toEqual(['the disk is full'])
        }
        // Where even putting the old set back fails, it stands aside, whole, until the next run.
        if (readdirSync(out).includes('marsh'))
          expect(contentsOf(join(out, 'marsh'))).toEqual(run.ok ? fresh : old)
        const next = await writePlan(request(out, 'new', { only: ['bingo'] }))
        expect([at, next.ok, next.problems, readdirSync(out)]).toEqual([at, true, [], ['marsh']])
      }
      expect(failures).toBeGreaterThan(15)
    },
  )
})
