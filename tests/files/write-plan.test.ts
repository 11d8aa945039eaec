import { execFileSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import {
  chmod,
  mkdir,
  mkdtemp,
  readdir,
  readFile,
  rename,
  rm,
  stat,
  symlink,
  writeFile,
} from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { basename, join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { type FileSystem, machineFiles } from '../../src/files/folder/file-system.js'
import { runFile } from '../../src/files/folder/run-files.js'
import { thisHost } from '../../src/files/folder/running-process.js'
import type { Manifest } from '../../src/files/manifest.js'
import type { PrintedPlan } from '../../src/files/printed-plan.js'
import { type WriteRequest, writePlan } from '../../src/files/write-plan.js'
import { hasErrors } from '../../src/problems.js'
import { card, item, marsh, plan, sheet } from './marsh-sheets.js'

let out: string
beforeEach(async () => {
  out = await mkdtemp(join(tmpdir(), 'oaktag-test-'))
})
afterEach(async () => {
  await rm(out, { recursive: true, force: true })
})

const twoItems = [item(), item({ name: 'bingo', layout: 'bingo', sheets: [sheet(), sheet({ number: 2 })] })]

function request(change: Partial<WriteRequest> = {}): WriteRequest {
  return {
    printed: plan({ items: twoItems }),
    outFolder: out,
    formats: ['svg', 'png'],
    dpi: 50,
    jobs: 1,
    version: '0.1.0',
    ...change,
  }
}

async function filesIn(folder: string): Promise<string[]> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true })
  return entries
    .filter(entry => entry.isFile())
    .map(entry => join(entry.parentPath, entry.name).slice(folder.length + 1))
    .sort()
}

async function contentsOf(folder: string): Promise<Record<string, string>> {
  const files = await filesIn(folder)
  const bytes = await Promise.all(files.map(file => readFile(join(folder, file), 'base64')))
  return Object.fromEntries(files.map((file, index) => [file, bytes[index]!]))
}

const manifest = async (): Promise<Manifest> =>
  JSON.parse(await readFile(join(out, 'marsh/manifest.json'), 'utf8')) as Manifest

describe('a plan’s folder', () => {
  it('holds every sheet in the formats asked for, the proof page and the manifest', async () => {
    const written = await writePlan(request())
    expect(written).toMatchObject({ ok: true, problems: [] })
    expect(await filesIn(out)).toEqual([
      'marsh/bingo/bingo-01.png',
      'marsh/bingo/bingo-01.svg',
      'marsh/bingo/bingo-02.png',
      'marsh/bingo/bingo-02.svg',
      'marsh/index.html',
      'marsh/manifest.json',
      'marsh/word-cards/word-cards-01.png',
      'marsh/word-cards/word-cards-01.svg',
    ])
  })

  it('is on the disk itself before it takes its place, its manifest too', async () => {
    const told: string[] = []
    const files: FileSystem = {
      ...machineFiles,
      write: async (path, contents) => {
        told.push(`write ${basename(path)}`)
        await machineFiles.write(path, contents)
      },
      settle: async path => {
        told.push(`settle ${basename(path).replace(/^.*new.*$/, 'folder')}`)
        await machineFiles.settle(path)
      },
      rename: async (from, to) => {
        if (to === join(out, 'marsh')) told.push('take its place')
        await machineFiles.rename(from, to)
      },
    }
    await writePlan(request({ files }))
    expect(told.slice(-5)).toEqual([
      'write manifest.json',
      'settle manifest.json',
      'write index.html',
      'settle folder',
      'take its place',
    ])
  })

  it('holds the same bytes from run to run and for any number of jobs', async () => {
    await writePlan(request())
    const first = await contentsOf(out)
    await writePlan(request({ jobs: 4 }))
    expect(await contentsOf(out)).toEqual(first)
  })

  it('holds nothing of an earlier run that the newest did not make', async () => {
    await writePlan(request())
    await writePlan(request({ printed: plan(), formats: ['svg'] }))
    expect(await filesIn(out)).toEqual([
      'marsh/index.html',
      'marsh/manifest.json',
      'marsh/word-cards/word-cards-01.svg',
    ])
  })

  it('takes three digits in the names of an item of a hundred sheets', async () => {
    const sheets = Array.from({ length: 100 }, () => sheet({ pieces: [], cuts: [], furniture: [] }))
    await writePlan(request({ printed: plan({ items: [item({ sheets })] }), formats: ['svg'] }))
    expect((await readdir(join(out, 'marsh/word-cards'))).sort().at(0)).toBe('word-cards-001.svg')
  })
})

describe('--only', () => {
  const changed = [
    item({ sheets: [sheet({ title: 'Changed cards' })] }),
    item({ name: 'bingo', sheets: [sheet({ title: 'Changed boards' })] }),
  ]

  it('makes the named item and leaves the others’ files and manifest entries as they are', async () => {
    await writePlan(request())
    const before = await contentsOf(out)
    const entry = (await manifest()).items[0]
    const written = await writePlan(request({ printed: plan({ items: changed }), only: ['bingo'] }))
    expect(written.ok).toBe(true)
    const after = await contentsOf(out)
    const cards = (set: Record<string, string>) =>
      Object.entries(set).filter(([file]) => file.startsWith('marsh/word-cards'))
    expect(cards(after)).toEqual(cards(before))
    expect((await manifest()).items.map(({ name }) => name)).toEqual(['word-cards', 'bingo'])
    expect((await manifest()).items[0]).toEqual(entry)
    expect((await manifest()).items[1]!.pages).toHaveLength(1)
    expect(Object.keys(after)).not.toContain('marsh/bingo/bingo-02.svg')
  })

  it('keeps the other items’ sheets on the proof page, and shows the new ones', async () => {
    await writePlan(request())
    await writePlan(request({ printed: plan({ items: changed }), only: ['bingo'] }))
    const page = await readFile(join(out, 'marsh/index.html'), 'utf8')
    expect(page).toContain('Word cards, sheet 1 of 1')
    expect(page).toContain('Changed boards')
    expect(page).not.toContain('Changed cards')
  })

  it('ends with what a full run makes when nothing has changed', async () => {
    await writePlan(request())
    const full = await contentsOf(out)
    await writePlan(request({ only: ['word-cards'] }))
    expect(await contentsOf(out)).toEqual(full)
  })

  it('says so when a file of the last set is missing, and changes nothing', async () => {
    await writePlan(request())
    await rm(join(out, 'marsh/word-cards/word-cards-01.png'))
    const before = await contentsOf(out)
    const written = await writePlan(request({ only: ['bingo'] }))
    expect(written.ok).toBe(false)
    expect(written.problems.map(problem => problem.message)).toEqual(['this file of the last set is missing'])
    expect(await contentsOf(out)).toEqual(before)
  })
})

describe('a run that cannot be finished', () => {
  it('leaves the last set as it was and nothing of its own', async () => {
    await writePlan(request())
    const before = await contentsOf(out)
    const broken = item({
      name: 'bingo',
      sheets: [
        sheet({
          furniture: [
            {
              xMm: 0,
              yMm: 0,
              art: {
                widthMm: 10,
                heightMm: 10,
                text: [],
                shapes: [
                  {
                    kind: 'image',
                    bytes: new Uint8Array([1, 2, 3]),
                    mediaType: 'image/png',
                    box: { xMm: 0, yMm: 0, widthMm: 10, heightMm: 10 },
                    description: 'a heron',
                  },
                ],
              },
            },
          ],
        }),
      ],
    })
    const written = await writePlan(request({ printed: plan({ items: [item(), broken] }), jobs: 2 }))
    expect(written.ok).toBe(false)
    expect(written.problems[0]!.message).toContain('a heron')
    expect(await contentsOf(out)).toEqual(before)
    expect(await readdir(out)).toEqual(['marsh'])
  })

  it('leaves the last set where it is told to stop before the new one takes its place', async () => {
    await writePlan(request())
    const before = await contentsOf(out)
    const printed = plan({ items: [item({ name: 'cards' })] })
    const beforeInPlace = async () => {
      throw new Error('saved again')
    }
    await expect(writePlan(request({ printed, beforeInPlace }))).rejects.toThrow('saved again')
    expect(await contentsOf(out)).toEqual(before)
    expect(await readdir(out)).toEqual(['marsh'])
  })

  it('takes back the folders that it made for --out', async () => {
    const printed = plan({ items: [item(), item()] })
    const outFolder = join(out, 'new/deep')
    const written = await writePlan(request({ printed, outFolder }))
    expect(written.ok).toBe(false)
    expect(await readdir(out)).toEqual([])
  })

  it('clears up after a run that was killed, and puts back a set caught between two renames', async () => {
    await writePlan(request())
    const before = await contentsOf(join(out, 'marsh'))
    const left = (role: 'new' | 'old') =>
      runFile(out, 'marsh', `${thisHost.machine}-99999999-abcdefghij`, role)
    await mkdir(left('new'))
    await writeFile(join(left('new'), 'half.svg'), '')
    await rename(join(out, 'marsh'), left('old'))
    await writePlan(request({ only: ['bingo'] }))
    expect(await readdir(out)).toEqual(['marsh'])
    expect(await contentsOf(join(out, 'marsh'))).toEqual(before)
  })
})

describe('what is not ours', () => {
  it('refuses a folder that oaktag did not make', async () => {
    await mkdir(join(out, 'marsh'))
    await writeFile(join(out, 'marsh/holiday.txt'), 'mine')
    const written = await writePlan(request())
    expect(written.ok).toBe(false)
    expect(written.problems[0]!.advice).toContain('--out')
    expect(await filesIn(out)).toEqual(['marsh/holiday.txt'])
  })

  it('refuses a folder with somebody else’s manifest.json', async () => {
    await mkdir(join(out, 'marsh'))
    await writeFile(join(out, 'marsh/manifest.json'), '{"name":"a web app"}')
    expect((await writePlan(request())).ok).toBe(false)
    expect(await filesIn(out)).toEqual(['marsh/manifest.json'])
  })

  it('moves a teacher’s own file out of the folder, beside it, and says where to', async () => {
    await writePlan(request())
    await writeFile(join(out, 'marsh/bingo/notes.txt'), 'Terns: two boards more')
    const written = await writePlan(request())
    expect(written.ok).toBe(true)
    expect(written.problems.map(problem => problem.severity)).toEqual(['warning'])
    expect(await readFile(join(out, 'marsh-other-files/bingo/notes.txt'), 'utf8')).toBe(
      'Terns: two boards more',
    )
    expect(await readdir(join(out, 'marsh/bingo'))).not.toContain('notes.txt')
  })

  it('never overwrites a file that it moved out before', async () => {
    for (const text of ['first', 'second']) {
      await writePlan(request())
      await writeFile(join(out, 'marsh/notes.txt'), text)
    }
    await writePlan(request())
    expect(await readFile(join(out, 'marsh-other-files/notes.txt'), 'utf8')).toBe('first')
    expect(await readFile(join(out, 'marsh-other-files/notes-2.txt'), 'utf8')).toBe('second')
  })
})

describe('a manifest that is not as we write it', () => {
  const whole = () => JSON.parse(JSON.stringify(lastManifest)) as Record<string, unknown>
  let lastManifest: Manifest
  beforeEach(async () => {
    await writePlan(request())
    lastManifest = await manifest()
  })

  it.each<[string, (path: string) => Promise<unknown>]>([
    ['is empty', path => writeFile(path, '')],
    ['breaks off', path => writeFile(path, JSON.stringify(whole()).slice(0, 400))],
    ['is a list nested without end', path => writeFile(path, '['.repeat(200_000))],
    ['has no items', path => writeFile(path, '{"oaktag":"0.1.0","title":"x","items":{}}')],
    ['has an item without pages', path => writeFile(path, changed({ items: [{ name: 'bingo' }] }))],
    [
      'has a page that is nothing',
      path => writeFile(path, changed({ items: [{ name: 'a', layout: 'a', pages: [null] }] })),
    ],
    ['has prints that are a number', path => writeFile(path, changed({ prints: 3 }))],
    ['leads out of its folder', path => writeFile(path, changed({ pdf: '../../secret.pdf' }))],
    ['is a folder', path => mkdir(path)],
    ['is a link', path => symlink('/dev/zero', path)],
    ['is a pipe', async path => execFileSync('mkfifo', [path])],
  ])('%s: the folder is refused and left as it is', async (_, make) => {
    const path = join(out, 'marsh/manifest.json')
    await rm(path)
    await make(path)
    for (const only of [undefined, ['bingo']]) {
      const written = await writePlan(request(only === undefined ? {} : { only }))
      expect(written.problems.map(problem => problem.message)).toEqual([
        'the manifest.json in this folder is not one of oaktag’s',
      ])
    }
    expect(await readdir(out)).toEqual(['marsh'])
  })

  const changed = (change: object) => JSON.stringify({ ...whole(), ...change })

  it('does without a proof page that is a pipe', async () => {
    await rm(join(out, 'marsh/index.html'))
    execFileSync('mkfifo', [join(out, 'marsh/index.html')])
    expect((await writePlan(request({ only: ['bingo'] }))).ok).toBe(true)
  })
})

describe('a set that was made from another plan of the same name', () => {
  const told = async (printed: PrintedPlan, only?: readonly string[]) =>
    (await writePlan(request({ printed, ...(only && { only }) }))).problems.map(problem => problem.message)
  const other = (change: Partial<PrintedPlan>) => plan({ items: twoItems, ...change })

  it('is not replaced in silence', async () => {
    await writePlan(request())
    expect(await told(other({ title: 'Down the lane' }))).toEqual([
      'the set “Along the marsh” that stood here was replaced',
    ])
    expect(await told(other({ title: 'Down the lane' }))).toEqual([])
    expect(await told(other({ title: 'Down the lane', className: 'Room 8' }))).toHaveLength(1)
  })

  it('is not mixed with it in silence', async () => {
    await writePlan(request())
    expect(await told(other({ title: 'Down the lane' }), ['bingo'])).toEqual([
      'what --only left as it was is of the set “Along the marsh” that stood here',
    ])
  })

  it('is known by its words, where both have one title', async () => {
    await writePlan(request())
    const piece = { ...card(1, marsh), text: ['fog'] }
    const items = [item({ sheets: [sheet({ pieces: [{ piece, xMm: 10, yMm: 10, turn: 0 }] })] })]
    expect(await told(other({ items }))).toEqual([
      'the set “Along the marsh”, with other words, that stood here was replaced',
    ])
  })
})

describe('a set that takes the place of the last one', () => {
  const gone = async (change: Partial<WriteRequest>) => {
    const written = await writePlan(request(change))
    return written.ok ? written.value.gone : undefined
  }
  const withText = (text: string) => {
    const piece = { ...card(1, marsh), text: [text] }
    return item({ sheets: [sheet({ pieces: [{ piece, xMm: 10, yMm: 10, turn: 0 }] })] })
  }

  it('says which items and words are gone with it', async () => {
    await writePlan(request({ printed: plan({ items: twoItems }) }))
    const items = [{ ...withText('fog'), name: 'strips' }]
    const names = twoItems.map(({ name }) => name)
    const printed = plan({ items, itemNames: ['strips'] })
    expect(await gone({ printed })).toEqual({ items: names, words: ['reed', 'marsh'] })
  })

  it('has nothing gone where it is the first, the same again, or one item of it alone', async () => {
    const nothing = { items: [], words: [] }
    expect(await gone({})).toEqual(nothing)
    expect(await gone({})).toEqual(nothing)
    expect(await gone({ only: ['bingo'] })).toEqual(nothing)
  })
})

describe('an output folder that cannot be written', () => {
  it('is a problem with advice when it is a link that leads nowhere', async () => {
    await symlink(join(out, 'nowhere'), join(out, 'link'))
    for (const outFolder of ['link', 'link/below']) {
      const written = await writePlan(request({ outFolder: join(out, outFolder) }))
      expect(written.problems.map(({ place, message }) => [place.file, message])).toEqual([
        [join(out, 'link'), 'this is a link that leads nowhere, and a folder is needed'],
      ])
    }
  })

  it.runIf(existsSync('/dev/full'))('is a problem with advice when it is a device', async () => {
    const written = await writePlan(request({ outFolder: '/dev/full' }))
    expect(written.problems.map(({ message }) => message)).toEqual(['a file stands where a folder is needed'])
  })

  it('is a problem with advice when it is a file', async () => {
    await writeFile(join(out, 'file'), '')
    for (const outFolder of [join(out, 'file'), join(out, 'file/below')]) {
      const written = await writePlan(request({ outFolder }))
      expect(written.problems.map(problem => problem.message)).toEqual([
        'a file stands where a folder is needed',
      ])
    }
  })

  it('is a problem with advice when the plan’s own folder is a file', async () => {
    await writeFile(join(out, 'marsh'), 'mine')
    const written = await writePlan(request())
    expect(hasErrors(written.problems)).toBe(true)
    expect(await readFile(join(out, 'marsh'), 'utf8')).toBe('mine')
  })

  it('is a problem with advice when writing is not allowed', async () => {
    await chmod(out, 0o555)
    const written = await asOrdinaryUser(() => writePlan(request()))
    await chmod(out, 0o755)
    expect(written.problems.map(problem => problem.message)).toEqual(['this folder cannot be written to'])
    expect(await readdir(out)).toEqual([])
  })

  it('is a problem with advice when the path is too long', async () => {
    const written = await writePlan(request({ printed: plan({ stem: 'm'.repeat(300) }) }))
    expect(written.problems.map(problem => problem.message)).toEqual(['the path is too long'])
    expect(await readdir(out)).toEqual([])
  })

  it('is a problem when an item’s name cannot be a folder, or two are the same', async () => {
    for (const names of [['../up'], ['a/b'], ['index.html'], [''], ['bingo', 'Bingo']]) {
      const items = names.map(name => item({ name }))
      const written = await writePlan(request({ printed: plan({ items }) }))
      expect(written.ok).toBe(false)
    }
    expect(await readdir(out)).toEqual([])
  })
})

describe('several runs of one plan at once', () => {
  it('end with one whole set where machine and process number are the same, as in two containers', async () => {
    const host = { ...thisHost, processId: 7 }
    const runs = await Promise.all([1, 2, 3, 4].map(() => writePlan(request({ host }))))
    expect(runs.flatMap(run => run.problems)).toEqual([])
    expect(await readdir(out)).toEqual(['marsh'])
  })

  it('end with one whole set', async () => {
    const runs = await Promise.all([1, 2, 3, 4].map(jobs => writePlan(request({ jobs }))))
    expect(runs.flatMap(run => run.problems)).toEqual([])
    const together = await contentsOf(out)
    await rm(join(out, 'marsh'), { recursive: true })
    await writePlan(request())
    expect(await contentsOf(out)).toEqual(together)
  })

  it('lose no item when each makes another one', async () => {
    await writePlan(request())
    const full = await contentsOf(out)
    const older = [item({ sheets: [sheet({ title: 'Old' })] }), item({ name: 'bingo', sheets: [] })]
    await writePlan(request({ printed: plan({ items: older }) }))
    const runs = await Promise.all(['bingo', 'word-cards'].map(name => writePlan(request({ only: [name] }))))
    expect(runs.flatMap(run => run.problems)).toEqual([])
    expect(await contentsOf(out)).toEqual(full)
    expect((await stat(join(out, 'marsh'))).isDirectory()).toBe(true)
  })
})

/** The superuser may write anywhere: a test run by one steps down to "nobody" (65534) for the while. */
async function asOrdinaryUser<T>(run: () => Promise<T>): Promise<T> {
  if (process.geteuid?.() !== 0) return run()
  process.seteuid?.(65534)
  try {
    return await run()
  } finally {
    process.seteuid?.(0)
  }
}
