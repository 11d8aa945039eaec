/** Sets whose files another thread puts on the disk, as where a plan is watched. */
import { mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { drawAhead } from '../../src/files/draw-ahead.js'
import type { PrintedPlan } from '../../src/files/printed-plan.js'
import { openWritingThread } from '../../src/files/thread/open-writing-thread.js'
import type { WritingThread } from '../../src/files/thread/writing-thread.js'
import type { KeptFiles } from '../../src/files/write-items.js'
import { type WriteRequest, writePlan } from '../../src/files/write-plan.js'
import { buildFolder } from '../../src/installation.js'
import { asToDraw } from '../../src/sheets/sheet.js'
import { folderWith } from '../pipeline/plan-folder.js'
import { systemError, troubledFiles } from './folder/troubled-files.js'
import { art, item, plan, sheet, unreadable } from './marsh-sheets.js'
import { threadThat } from './thread/thread-that.js'

const keptFiles = (thread: WritingThread): KeptFiles => ({ thread })

const blank = { pieces: [], cuts: [], furniture: [] }
/** Two items, of which one is the same in every set. */
const set = (title: string) =>
  plan({
    items: [
      item({ name: 'word-cards', sheets: [sheet({ ...blank, title })] }),
      item({ name: 'bingo', sheets: [sheet({ ...blank, title: 'bingo' })] }),
    ],
  })

function request(outFolder: string, title: string, change: Partial<WriteRequest> = {}): WriteRequest {
  return {
    printed: set(title),
    outFolder,
    formats: ['svg', 'png'],
    dpi: 50,
    jobs: 2,
    version: '0.1.0',
    ...change,
  }
}

/** As while the rest of the plan is laid out. */
function drawnAhead({ items }: PrintedPlan, kept: KeptFiles): void {
  for (const each of items) drawAhead({ ...each, sheets: each.sheets.map(asToDraw) }, 50, kept)
}

function contentsOf(folder: string): Readonly<Record<string, string>> {
  const entries = readdirSync(folder, { recursive: true, withFileTypes: true }).filter(each => each.isFile())
  const paths = entries.map(({ parentPath, name }) => join(parentPath, name)).sort()
  return Object.fromEntries(paths.map(path => [path.slice(folder.length + 1), readFileSync(path, 'latin1')]))
}

async function madeApart(title: string): Promise<Readonly<Record<string, string>>> {
  const out = folderWith({})
  await writePlan(request(out, title))
  return contentsOf(join(out, 'marsh'))
}

let thread: WritingThread
beforeAll(async () => {
  thread = openWritingThread()
  thread.start()
  while (!thread.isReady()) await new Promise(done => setTimeout(done, 1))
})
afterAll(() => thread.end())

describe('a set that is written again and again', () => {
  it('is, byte for byte, the one that is written without another thread; what is the same is the same file', async () => {
    const [out, kept] = [folderWith({}), keptFiles(thread)]
    const boards = () => statSync(join(out, 'marsh/bingo/bingo-01.png')).ino
    const files: number[] = []
    for (const title of ['one', 'two', 'three', 'two']) {
      const written = await writePlan(request(out, title, { kept }))
      expect([written.ok, written.problems]).toEqual([true, []])
      expect(contentsOf(join(out, 'marsh'))).toEqual(await madeApart(title))
      files.push(boards())
    }
    expect(new Set(files).size).toBe(1)
    await kept.removing
    expect(readdirSync(out)).toEqual(['marsh'])
  })

  it('leaves files that are not ours beside it, and says so', async () => {
    const [out, kept] = [folderWith({}), keptFiles(thread)]
    await writePlan(request(out, 'one', { kept }))
    mkdirSync(join(out, 'marsh/mine'))
    writeFileSync(join(out, 'marsh/mine/notes.txt'), 'two boards more')
    const { problems } = await writePlan(request(out, 'two', { kept }))
    const moved = join(out, 'marsh-other-files/mine/notes.txt')
    expect(problems.map(({ place, message }) => [place.file, message])).toEqual([
      [moved, 'this file was in the plan’s folder and was moved here'],
    ])
    expect(readFileSync(moved, 'utf8')).toBe('two boards more')
  })

  it('stays as it was where the next is not to take its place, and nothing is left of that', async () => {
    const [out, kept] = [folderWith({}), keptFiles(thread)]
    await writePlan(request(out, 'one', { kept }))
    const beforeInPlace = () => Promise.reject(new Error('saved again'))
    await expect(writePlan(request(out, 'two', { kept, beforeInPlace }))).rejects.toThrow('saved again')
    expect(readdirSync(out)).toEqual(['marsh'])
    expect(contentsOf(join(out, 'marsh'))).toEqual(await madeApart('one'))
  })

  it('stays as it was where the disk refuses a file of the next, and it is said why', async () => {
    const [out, kept] = [folderWith({}), keptFiles(thread)]
    await writePlan(request(out, 'one', { kept }))
    const long = plan({ items: [item({ name: 'word-cards'.repeat(25), sheets: [sheet(blank)] })] })
    const refused = await writePlan(request(out, 'two', { kept, printed: long }))
    expect(refused.problems.map(({ message }) => message)).toEqual(['the path is too long'])
    expect(readdirSync(out)).toEqual(['marsh'])
    expect(contentsOf(join(out, 'marsh'))).toEqual(await madeApart('one'))
  })
})

describe('sets of two plans that are written by one thread', () => {
  const pond = plan({
    stem: 'pond',
    items: [item({ name: 'word-cards', sheets: [sheet(), sheet({ cuts: [] })] })],
  })
  const marsh = plan({ items: [item({ sheets: [sheet({ cuts: [] }), sheet({ furniture: [] })] })] })

  it('hold what they hold when each is made apart, though pages of both are drawn ahead before one is written', async () => {
    const [apart, out] = [folderWith({}), folderWith({})]
    for (const printed of [marsh, pond]) await writePlan(request(apart, '', { printed }))
    const [ofMarsh, ofPond] = [keptFiles(thread), keptFiles(thread)]
    drawnAhead(marsh, ofMarsh)
    drawnAhead(pond, ofPond)
    await writePlan(request(out, '', { printed: marsh, kept: ofMarsh }))
    drawnAhead(marsh, ofMarsh)
    await writePlan(request(out, '', { printed: pond, kept: ofPond }))
    await Promise.all([ofMarsh.removing, ofPond.removing])
    expect(contentsOf(out)).toEqual(contentsOf(apart))
  })
})

describe('a picture that cannot be read', () => {
  const furniture = [{ art: art([unreadable]), xMm: 40, yMm: 200 }]
  const printed = plan({ items: [item({ sheets: [sheet(), sheet({ furniture }), sheet({ cuts: [] })] })] })

  it('is told of once and in the same words, whether its page was drawn ahead or not; the last set stays', async () => {
    const out = folderWith({})
    await writePlan(request(out, 'old'))
    const { problems } = await writePlan(request(out, '', { printed }))
    expect(problems).toHaveLength(1)
    for (const isDrawnAhead of [false, true]) {
      const kept = keptFiles(thread)
      if (isDrawnAhead) drawnAhead(printed, kept)
      const written = await writePlan(request(out, '', { printed, kept }))
      expect([isDrawnAhead, written.ok, written.problems]).toEqual([isDrawnAhead, false, problems])
    }
    thread.letGoAhead()
    expect(contentsOf(join(out, 'marsh'))).toEqual(await madeApart('old'))
  })
})

describe('an old set that cannot be removed', () => {
  /** What each of four runs tells, where files of the old set are held open in some. */
  async function toldWhere(isHeld: (run: number) => boolean): Promise<readonly (readonly string[])[]> {
    const out = folderWith({})
    let run = 0
    const holding = (path: string): void => {
      if (path.endsWith('.gone') && isHeld(run)) throw systemError('EBUSY', 'rmdir')
    }
    const held: WritingThread = {
      ...thread,
      removeFolder: async path => {
        holding(path)
        return thread.removeFolder(path)
      },
    }
    const files = troubledFiles((change, path) => {
      if (change === 'removeFolder') holding(path)
    })
    const kept = keptFiles(held)
    const told: string[][] = []
    for (run = 1; run <= 4; run++) {
      const written = await writePlan(request(out, `${run}`, { kept, files, wait: async () => {} }))
      told.push(written.problems.map(({ message }) => message))
      await kept.removing
    }
    return told
  }

  it('is told of by the next run, where that cannot remove it either', async () => {
    const warning =
      'the set that was replaced could not be removed: a file of the last set is open in another program'
    expect(await toldWhere(run => run === 2 || run === 3)).toEqual([[], [], [warning], []])
  })

  it('is told of by none, where the next run can', async () => {
    expect(await toldWhere(run => run === 2)).toEqual([[], [], [], []])
  })
})

describe('a thread that ends', () => {
  it('at any of its tasks, the first of which is to draw ahead, costs no set: what it leaves undone is done without it', async () => {
    const [old, fresh] = [await madeApart('old'), await madeApart('new')]
    let died = 0
    for (let tasks = 0, dies = true; dies; tasks++) {
      const out = folderWith({})
      const dying = await threadThat(
        `await import(${JSON.stringify(join(buildFolder, 'src/files/thread/thread-worker.js'))})
        let left = ${tasks}
        parentPort.on('message', () => left-- > 0 || process.exit())`,
      )
      const kept = keptFiles(dying)
      await writePlan(request(out, 'old'))
      drawnAhead(set('new'), kept)
      const written = await writePlan(request(out, 'new', { kept }))
      expect([tasks, written.ok, written.problems]).toEqual([tasks, true, []])
      expect(contentsOf(join(out, 'marsh'))).toEqual(fresh)
      await kept.removing
      dies = !dying.isReady()
      if (dies) died += 1
      drawnAhead(set('old'), kept)
      const next = await writePlan(request(out, 'old', { kept }))
      expect([tasks, next.ok, next.problems]).toEqual([tasks, true, []])
      expect(contentsOf(join(out, 'marsh'))).toEqual(old)
      await kept.removing
      expect([tasks, readdirSync(out)]).toEqual([tasks, ['marsh']])
      await dying.end()
    }
    // Among them are the last two: to put the old set aside, and to remove it.
    expect(died).toBeGreaterThan(4)
  })
})
