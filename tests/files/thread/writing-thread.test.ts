import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import sharp from 'sharp'
import { afterAll, beforeAll, describe, expect, it, onTestFinished } from 'vitest'
import { fileProblem } from '../../../src/files/folder/file-problem.js'
import { machineFiles, systemCode } from '../../../src/files/folder/file-system.js'
import {
  type LeftFile,
  type PictureToDraw,
  type SetFiles,
  setFilesAtOnce,
} from '../../../src/files/folder/set-files.js'
import type { Contents } from '../../../src/files/folder/write-file.js'
import { type PageShapes, pageShapes } from '../../../src/files/page/page-shapes.js'
import { UnreadablePicture } from '../../../src/files/page/unreadable-picture.js'
import { createPngWriter } from '../../../src/files/png/png-writer.js'
import { openWritingThread } from '../../../src/files/thread/open-writing-thread.js'
import { PART_BYTES } from '../../../src/files/thread/shared-parts.js'
import { type WritingThread, WritingThreadEnded } from '../../../src/files/thread/writing-thread.js'
import type { ImageShape } from '../../../src/pieces/piece.js'
import { art, sheet, unreadable } from '../marsh-sheets.js'
import { threadThat } from './thread-that.js'

let thread: WritingThread
beforeAll(async () => {
  thread = openWritingThread({ partCount: 3 })
  thread.start()
  await ready(thread)
})
afterAll(() => thread.end())

async function ready({ isReady }: WritingThread): Promise<void> {
  while (!isReady()) await new Promise(done => setTimeout(done, 1))
}

function emptyFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'oaktag-thread-'))
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }))
  return folder
}

/** The files of one that says that it is there, never answers, and goes when it is told to. */
async function slowThread(): Promise<{ readonly files: SetFiles; readonly end: () => void }> {
  const goes = join(emptyFolder(), 'goes')
  const slow = await threadThat(
    `import { existsSync } from 'node:fs'
    setInterval(() => existsSync(${JSON.stringify(goes)}) && process.exit(), 5)`,
  )
  return { files: slow.setFiles(), end: () => writeFileSync(goes, '') }
}

const settled = (doing: Promise<unknown>): Promise<unknown> => doing.catch((error: unknown) => error)

function contentsOf(folder: string): Readonly<Record<string, string>> {
  const entries = readdirSync(folder, { recursive: true, withFileTypes: true }).filter(each => each.isFile())
  const paths = entries.map(({ parentPath, name }) => join(parentPath, name)).sort()
  return Object.fromEntries(paths.map(path => [path.slice(folder.length), readFileSync(path, 'latin1')]))
}

describe('files that another thread writes', () => {
  const long = 'größer als ein Zaunkönig 芦苇 🌾 '.repeat(PART_BYTES / 16)
  const contents: readonly Contents[] = [
    '',
    'reed',
    Uint8Array.of(0, 255, 10),
    new Uint8Array(5 * PART_BYTES + 3).map((_, at) => at % 251),
    long,
    [],
    ['reed ', 'marsh ', '🌾'],
    Array.from({ length: 40_000 }, (_, at) => `word ${at} `),
    ['before ', long, ' behind'],
  ]
  function* wordByWord(): Generator<string, void> {
    for (let at = 0; at < 60_000; at++) yield `wörd ${at} `
  }

  async function written(files: SetFiles): Promise<Readonly<Record<string, string>>> {
    const folder = emptyFolder()
    await files.makeFolder(join(folder, 'cards'))
    for (const [index, each] of [...contents, wordByWord()].entries())
      await files.write(join(folder, 'cards', `${index}`), each)
    await files.settle(folder)
    await files.done()
    return contentsOf(folder)
  }

  it('hold what they hold where each is written at once, however long they are', async () => {
    const atOnce = await written(setFilesAtOnce(machineFiles))
    expect(Object.keys(atOnce)).toHaveLength(contents.length + 1)
    expect(await written(thread.setFiles())).toEqual(atOnce)
  })

  it('come in the order in which they are asked for', async () => {
    const [folder, files] = [emptyFolder(), thread.setFiles()]
    // The folder and the file that is linked come to be just before they are needed; what is written last holds.
    for (let round = 0; round < 50; round++) {
      const [cards, page] = [join(folder, `${round}`), join(folder, `${round}`, 'page.svg')]
      await files.makeFolder(cards)
      await files.write(page, `a long text ${round}`)
      await files.write(page, `${round}`)
      await files.link(page, join(cards, 'again.svg'), () => {})
    }
    await files.done()
    const texts = Object.values(contentsOf(folder))
    expect(texts.sort()).toEqual(Array.from({ length: 100 }, (_, at) => `${Math.floor(at / 2)}`).sort())
  })

  it('are told of as the disk has them', async () => {
    const [folder, files] = [emptyFolder(), thread.setFiles()]
    const [made, again] = [join(folder, 'reed.svg'), join(folder, 'again.svg')]
    const told: LeftFile[] = []
    await files.write(made, [long, long], left => told.push(left))
    await files.link(made, again, left => told.push(left))
    await files.done()
    const { size, mtimeMs } = statSync(made)
    expect(told).toEqual([
      { linked: false, standing: { kind: 'file', sizeBytes: size, changedMs: mtimeMs } },
      { linked: true, standing: undefined },
    ])
    expect(statSync(again).ino).toBe(statSync(made).ino)
  })

  it('of several hands at a time share the room that there is', async () => {
    const [folder, files] = [emptyFolder(), thread.setFiles()]
    const hands = Array.from({ length: 8 }, async (_, hand) => {
      for (let file = 0; file < 5; file++)
        await files.write(join(folder, `${hand}-${file}`), `${hand}`.repeat(2 * PART_BYTES))
    })
    await Promise.all(hands)
    await files.done()
    const found = Object.entries(contentsOf(folder))
    expect(found).toHaveLength(40)
    for (const [path, text] of found) expect(text).toBe(path[1]!.repeat(2 * PART_BYTES))
  })
})

const photograph: ImageShape = {
  kind: 'image',
  bytes: await sharp({ create: { width: 12, height: 12, channels: 3, background: '#336699' } })
    .png()
    .toBuffer(),
  mediaType: 'image/png',
  box: { xMm: 5, yMm: 5, widthMm: 20, heightMm: 20 },
  description: 'a heron',
}
const first = pageShapes(sheet())
const pages: readonly PageShapes[] = [
  first,
  pageShapes(sheet({ furniture: [{ art: art([photograph]), xMm: 40, yMm: 200 }] })),
  { ...first, drawings: first.drawings.slice(1) },
  { ...first, drawings: [] },
]
const picture = (page: PageShapes, look: string): PictureToDraw => ({ dpi: 50, look, page: () => page })

const unreadablePage = pageShapes(sheet({ furniture: [{ art: art([unreadable]), xMm: 40, yMm: 200 }] }))

describe('pages that another thread draws', () => {
  async function expectDrawn(files: SetFiles, about: string): Promise<void> {
    const folder = emptyFolder()
    const told: LeftFile[] = []
    for (const [index, page] of pages.entries())
      await files.draw!(join(folder, `${index}.png`), picture(page, `${about} ${index}`), left =>
        told.push(left),
      )
    await files.done()
    const writer = createPngWriter(50)
    for (const [index, page] of pages.entries()) {
      const file = readFileSync(join(folder, `${index}.png`))
      expect(file.equals(await writer.writeShapes(page))).toBe(true)
      expect(told[index]).toMatchObject({ linked: false, standing: { sizeBytes: file.length } })
    }
  }

  it('are, byte for byte, those that are drawn here, in run after run', async () => {
    for (const run of ['one', 'two', 'three', 'four']) {
      await expectDrawn(thread.setFiles(), run)
      thread.letGo()
    }
  })

  it('are drawn with shapes that stood first on pages of a run that failed', async () => {
    const other = openWritingThread()
    onTestFinished(() => other.end())
    other.start()
    await ready(other)
    const [failing, folder] = [other.setFiles(), emptyFolder()]
    await failing.makeFolder(join(folder, 'no', 'such'))
    for (const page of pages) await failing.draw!(join(folder, 'page.png'), picture(page, 'failing'))
    expect(systemCode(await settled(failing.done()))).toBe('ENOENT')
    expect(readdirSync(folder)).toEqual([])
    await expectDrawn(other.setFiles(), 'after it')
  })

  it('are not drawn twice where they look the same, and are when that was let go', async () => {
    const folder = emptyFolder()
    const drawn = async (page: PageShapes): Promise<Buffer> => {
      const files = thread.setFiles()
      await files.draw!(join(folder, 'page.png'), picture(page, 'one look'))
      await files.done()
      return readFileSync(join(folder, 'page.png'))
    }
    const [before, other] = [await drawn(pages[0]!), pages[3]!]
    expect((await drawn(other)).equals(before)).toBe(true)
    thread.letGo()
    thread.letGo()
    expect((await drawn(other)).equals(before)).toBe(false)
  })

  it('wait for one another where they are many', async () => {
    const { files, end } = await slowThread()
    let begun = 0
    const drawing = (async () => {
      for (; ; begun++) await files.draw!('/nowhere/page.png', picture(first, 'one'))
    })()
    await new Promise(done => setTimeout(done, 50))
    expect(begun).toBe(64)
    end()
    await expect(drawing).rejects.toThrow(WritingThreadEnded)
  })

  it('tell of a picture that cannot be read as it is told here', async () => {
    const files = thread.setFiles()
    await files.draw!(join(emptyFolder(), 'page.png'), picture(unreadablePage, 'broken'))
    const there = await settled(files.done())
    const here = await settled(createPngWriter(50).writeShapes(unreadablePage))
    expect(here).toBeInstanceOf(UnreadablePicture)
    expect(fileProblem(there, '/out', 'posix')).toEqual(fileProblem(here, '/out', 'posix'))
  })
})

describe('pages that are drawn ahead', () => {
  /** A picture that counts how often its page is asked for. */
  function counting(page: PageShapes, look: string): PictureToDraw & { readonly asked: () => number } {
    let asked = 0
    const counted = (): PageShapes => {
      asked += 1
      return page
    }
    return { dpi: 50, look, page: counted, asked: () => asked }
  }

  async function drawn(pictures: readonly PictureToDraw[], files = thread.setFiles()): Promise<Buffer[]> {
    const folder = emptyFolder()
    for (const [index, each] of pictures.entries()) await files.draw!(join(folder, `${index}.png`), each)
    await files.done()
    return pictures.map((_, index) => readFileSync(join(folder, `${index}.png`)))
  }

  async function drawnHere(page: PageShapes): Promise<Buffer> {
    return createPngWriter(50).writeShapes(page)
  }

  it('are, byte for byte, those that are drawn here, and each page is asked for once', async () => {
    const pictures = pages.map((page, index) => counting(page, `ahead ${index}`))
    thread.drawAhead(pictures.slice(0, 2))
    thread.drawAhead(pictures)
    const files = await drawn(pictures)
    for (const [index, page] of pages.entries()) expect(files[index]).toEqual(await drawnHere(page))
    expect(pictures.map(({ asked }) => asked())).toEqual([1, 1, 1, 1])
    thread.letGo()
  })

  it('are not drawn again when they are written', async () => {
    thread.drawAhead([picture(first, 'once')])
    // What is asked for under the same look is not looked at, so it is seen that the other was drawn.
    const other = counting(pages[3]!, 'once')
    expect(await drawn([other])).toEqual([await drawnHere(first)])
    expect(other.asked()).toBe(0)
    thread.letGo()
  })

  it.each<[string, () => void]>([
    ['a run that ended well', () => thread.letGo()],
    ['a run that ended without its set', () => thread.letGoAhead()],
  ])('are drawn from what is asked for then where %s let go of them', async (about, letGo) => {
    const between = picture(pages[1]!, `between ${about}`)
    thread.drawAhead([picture(first, about)])
    letGo()
    thread.drawAhead([between])
    letGo()
    expect(await drawn([picture(pages[3]!, about)])).toEqual([await drawnHere(pages[3]!)])
    thread.letGo()
  })

  it('cost what was drawn before nothing where a run without its set had none', async () => {
    await drawn([picture(first, 'stays')])
    for (let run = 0; run < 3; run++) thread.letGoAhead()
    expect(await drawn([picture(pages[3]!, 'stays')])).toEqual([await drawnHere(first)])
    thread.letGo()
  })

  it('may go before pages of a run that wait to be handed over, of the same shapes, and be let go meanwhile', async () => {
    const other = openWritingThread()
    onTestFinished(() => other.end())
    other.start()
    await ready(other)
    const [files, folder] = [other.setFiles(), emptyFolder()]
    other.drawAhead([picture(pages[2]!, '2')])
    for (const index of [0, 2])
      await files.draw!(join(folder, `${index}.png`), picture(pages[index]!, `${index}`))
    other.drawAhead([picture(pages[1]!, '1')])
    other.letGo()
    other.letGo()
    await files.draw!(join(folder, '1.png'), picture(pages[1]!, '1'))
    await files.done()
    for (const index of [0, 1, 2])
      expect(readFileSync(join(folder, `${index}.png`))).toEqual(await drawnHere(pages[index]!))
  })

  it('are 64 at most that wait; there is room again when they are drawn, and the others are drawn when written', async () => {
    const many = Array.from({ length: 100 }, (_, at) => counting(pages[3]!, `many ${at}`))
    const asked = () => many.reduce((sum, each) => sum + each.asked(), 0)
    thread.drawAhead(many.slice(0, 40))
    thread.drawAhead(many.slice(40, 80))
    expect(asked()).toBe(64)
    await thread.setFiles().done()
    await drawn([picture(first, 'behind them')])
    thread.drawAhead(many.slice(60, 70))
    expect(asked()).toBe(70)
    const files = await drawn(many)
    expect(asked()).toBe(100)
    const page = await drawnHere(pages[3]!)
    expect(files.every(file => file.equals(page))).toBe(true)
    thread.letGo()
  })

  it('tell of a picture that cannot be read when they are written, as it is told here; the next run is as any', async () => {
    const broken = picture(unreadablePage, 'broken ahead')
    thread.drawAhead([broken, picture(first, 'behind the broken one')])
    expect(await drawn([picture(first, 'behind the broken one')])).toEqual([await drawnHere(first)])
    const there = await settled(drawn([broken]))
    const here = await settled(drawnHere(broken.page()))
    expect(here).toBeInstanceOf(UnreadablePicture)
    expect(fileProblem(there, '/out', 'posix')).toEqual(fileProblem(here, '/out', 'posix'))
    expect(await drawn([picture(first, 'next')])).toEqual([await drawnHere(first)])
    thread.letGo()
  })

  it('are none where the thread is not ready yet: they are drawn when they are written', async () => {
    const late = openWritingThread()
    onTestFinished(() => late.end())
    const page = counting(first, 'late')
    late.drawAhead([page])
    expect(page.asked()).toBe(0)
    late.start()
    await ready(late)
    expect(await drawn([page], late.setFiles())).toEqual([await drawnHere(first)])
  })

  it('are told to nobody where the thread ends over them; whoever writes is told', async () => {
    const dying = await threadThat("parentPort.on('message', () => process.exit())")
    dying.drawAhead([picture(first, 'last')])
    await expect(drawn([picture(first, 'last')], dying.setFiles())).rejects.toThrow(WritingThreadEnded)
    dying.drawAhead([picture(first, 'later')])
    dying.letGoAhead()
    await dying.end()
  })

  it('are not waited for by whoever ends the thread', async () => {
    const slow = await threadThat('')
    slow.drawAhead([picture(first, 'never')])
    slow.letGoAhead()
    const late = new Promise(done => setTimeout(() => done('waited'), 2000))
    expect(await Promise.race([slow.end().then(() => 'ended'), late])).toBe('ended')
  })
})

describe('what the disk refuses', () => {
  it.each<[string, (files: SetFiles, folder: string) => Promise<void>]>([
    ['a folder', (files, folder) => files.makeFolder(join(folder, 'no', 'such'))],
    ['a folder that is there', (files, folder) => files.makeFolder(folder)],
    ['a file', (files, folder) => files.write(join(folder, 'no', 'reed.svg'), 'reed')],
    ['a file below a file', (files, folder) => files.write(join(folder, 'notes.txt', 'reed.svg'), 'reed')],
    ['a link', (files, folder) => files.link(join(folder, 'none'), join(folder, 'reed.svg'), () => {})],
  ])('is told as where it is asked at once: %s', async (_, ask) => {
    const folder = emptyFolder()
    writeFileSync(join(folder, 'notes.txt'), 'mine')
    const refusals = [setFilesAtOnce(machineFiles), thread.setFiles()].map(files =>
      settled(ask(files, folder).then(files.done)),
    )
    const [here, there] = await Promise.all(refusals)
    expect(here).toMatchObject({ code: expect.any(String), syscall: expect.any(String) })
    const { code, syscall, message } = Object(here)
    expect(there).toMatchObject({ code, syscall, message })
    expect(fileProblem(there, folder, 'posix')).toEqual(fileProblem(here, folder, 'posix'))
  })

  it.runIf(process.platform === 'linux')('may be that it is full', async () => {
    const files = thread.setFiles()
    await files.write('/dev/full', 'reed')
    expect(systemCode(await settled(files.done()))).toBe('ENOSPC')
  })

  it('ends the run: nothing comes behind it, those who go on asking are told, and the next run is as any', async () => {
    const [folder, files] = [emptyFolder(), thread.setFiles()]
    await files.write(join(folder, 'first.svg'), 'reed')
    await files.makeFolder(join(folder, 'no', 'such'))
    await files.write(join(folder, 'second.svg'), 'marsh')
    const asking = async () => {
      for (;;) await files.write(join(folder, 'third.svg'), 'wren')
    }
    expect(systemCode(await settled(asking()))).toBe('ENOENT')
    expect(systemCode(await settled(files.done()))).toBe('ENOENT')
    expect(readdirSync(folder)).toEqual(['first.svg'])
    const next = thread.setFiles()
    await next.write(join(folder, 'next.svg'), 'leaf')
    await next.done()
    expect(readdirSync(folder)).toEqual(['first.svg', 'next.svg'])
  })
})

describe('a disk that is slower than what makes files', () => {
  it('is waited for when the room for what waits is full', async () => {
    const { files, end } = await slowThread()
    let begun = 0
    const writing = (async () => {
      for (; ; begun++) await files.write('/nowhere/reed.svg', 'x'.repeat(PART_BYTES / 4))
    })()
    await new Promise(done => setTimeout(done, 20))
    expect(begun).toBe(2)
    end()
    await expect(writing).rejects.toThrow(WritingThreadEnded)
  })
})

describe('a thread that is gone', () => {
  it('is not ready, and whoever waits for it is told', async () => {
    const dying = await threadThat("parentPort.on('message', () => process.exit())")
    const files = dying.setFiles()
    await files.write('/nowhere/reed.svg', 'reed')
    await expect(files.done()).rejects.toThrow(WritingThreadEnded)
    expect(dying.isReady()).toBe(false)
    await expect(dying.removeFolder('/nowhere')).rejects.toThrow(WritingThreadEnded)
    await dying.end()
  })

  it('or cannot be started is never ready', async () => {
    const none = openWritingThread({ module: join(emptyFolder(), 'no-such-module.js') })
    none.start()
    await new Promise(done => setTimeout(done, 100))
    expect(none.isReady()).toBe(false)
    await none.end()
  })
})

it('a set is put aside and removed as by this thread, files that are not ours being kept', async () => {
  const folder = emptyFolder()
  const place = (name: string) => join(folder, name)
  mkdirSync(place('old'))
  writeFileSync(place('old/notes.txt'), 'mine')
  const discarding = { folder: place('old'), gone: place('gone'), keepIn: place('week-other-files') }
  expect(await thread.setAside(discarding)).toEqual([place('week-other-files/notes.txt')])
  expect(readdirSync(folder).sort()).toEqual(['gone', 'week-other-files'])
  await thread.removeFolder(place('gone'))
  expect(readdirSync(folder)).toEqual(['week-other-files'])
})
