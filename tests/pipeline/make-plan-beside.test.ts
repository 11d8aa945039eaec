/** Plans whose pages another thread draws while the rest is laid out, as where a plan is watched. */
import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it, onTestFinished } from 'vitest'
import { openWritingThread } from '../../src/files/thread/open-writing-thread.js'
import { keepWork } from '../../src/pipeline/kept-work.js'
import { type MakeRequest, makePlan } from '../../src/pipeline.js'
import { tellingThread } from '../files/thread/telling-thread.js'
import { folderWith } from './plan-folder.js'

const week = (print: string) => `title: Along the marsh
words: [reed, marsh, gnat, wren, leaf, moth, frog, perch, heron]
marks: [{pattern: consonant-digraph}]
print: [${print}]
`
const print = 'word-cards, bag-labels, {layout: bingo, grid: 2x2, boards: 2, cover: no}'

/** Plans made again and again with one that tells what it is to draw ahead: what happened in each run, in its order. */
function madeBeside() {
  const out = folderWith({})
  let events: string[] = []
  let lastOne: string | undefined
  const thread = tellingThread({
    aheadOne: () => events.push('a page'),
    writtenOne: () => events.push('written'),
    letGoAhead: () => events.push('let go'),
  })
  const kept = keepWork(thread)
  const signal = new AbortController()
  const made = async (text: string, change: Partial<MakeRequest> = {}): Promise<readonly string[]> => {
    events = []
    writeFileSync(join(out, 'week.yaml'), text)
    const request = { planFile: join(out, 'week.yaml'), outFolder: join(out, 'out'), dpi: 50, jobs: 1, kept }
    const onProgress = ({ step, item }: { readonly step: string; readonly item: string }) => {
      if (step === 'laid out') events.push(item)
      if (item === lastOne) signal.abort()
    }
    const watching = { onProgress, signal: signal.signal }
    await makePlan({ ...request, formats: ['png'], watching, ...change }).catch(() => events.push('given up'))
    await kept.files?.removing
    return events.filter((event, at) => event !== events[at - 1])
  }
  return { made, giveUpAt: (item: string) => (lastOne = item), out: join(out, 'out/week') }
}

describe('the pages of a watched plan', () => {
  it('are drawn ahead item by item while the rest is laid out; labels, which tell of all the others, are not', async () => {
    expect(await madeBeside().made(week(print))).toEqual([
      'word-cards',
      'a page',
      'bag-labels',
      'bingo',
      'a page',
      'written',
      'let go',
    ])
  })

  it('are not drawn ahead where no PNG file is asked for', async () => {
    const svg = { formats: ['svg'] } as const
    expect(await madeBeside().made(week(print), svg)).toEqual(['word-cards', 'bag-labels', 'bingo', 'let go'])
  })

  it('are those of the items that are made again, where the others stay', async () => {
    const { made } = madeBeside()
    await made(week(print))
    const changed = week(print).replace('gnat', 'newt')
    const events = await made(changed, { only: ['bingo'] })
    expect(events.slice(events.indexOf('bingo'))).toEqual(['bingo', 'a page', 'written', 'let go'])
    expect(events.filter(event => event === 'a page')).toHaveLength(1)
  })

  it('are not drawn ahead of a plan that cannot be read, nor where they are as they were', async () => {
    const { made } = madeBeside()
    await made(week('word-cards'))
    expect(await made(week('word-cards, bing'))).toEqual(['word-cards', 'let go'])
    expect(await made(week('word-cards'))).toEqual(['word-cards', 'let go'])
  })

  it('are not drawn ahead of a plan of which it is known from the words that a set cannot be dealt', async () => {
    const tooFew = week('word-cards, {layout: bingo, grid: 5x5}')
    expect(await madeBeside().made(tooFew)).toEqual(['word-cards', 'let go'])
  })

  it('are let go of where an item behind them cannot be made', async () => {
    const tooLarge = week('word-cards, {layout: bingo, grid: 2x2, size: 300 pt}')
    const { made, out } = madeBeside()
    expect(await made(tooLarge)).toEqual(['word-cards', 'a page', 'bingo', 'let go'])
    expect(existsSync(out)).toBe(false)
  })

  it('are let go of where the run is given up', async () => {
    const { made, giveUpAt, out } = madeBeside()
    giveUpAt('bag-labels')
    expect(await made(week(print))).toEqual(['word-cards', 'a page', 'bag-labels', 'let go', 'given up'])
    expect(existsSync(out)).toBe(false)
  })
})

it('a set whose pages are drawn ahead by a thread is, byte for byte, the one made without, after a run that was given up too', async () => {
  const thread = openWritingThread()
  onTestFinished(() => thread.end())
  thread.start()
  while (!thread.isReady()) await new Promise(done => setTimeout(done, 1))
  const folder = folderWith({ 'week.yaml': week(print) })
  const kept = keepWork(thread)
  const pictures = async (change: Partial<MakeRequest>) => {
    const outFolder = join(folder, change.kept === undefined ? 'alone' : 'beside')
    const request = { planFile: join(folder, 'week.yaml'), outFolder, dpi: 50 }
    const made = await makePlan({ ...request, formats: ['svg', 'png'], ...change })
    if (!made.ok) throw new Error('the week cannot be made')
    const files = made.value.manifest.items.flatMap(({ pages }) =>
      pages.flatMap(({ png, svg }) => [png, svg]),
    )
    return files.map(file => readFileSync(join(made.value.folder, file!), 'latin1'))
  }
  expect(await pictures({ kept })).toEqual(await pictures({}))
  writeFileSync(join(folder, 'week.yaml'), week(print).replace('gnat', 'newt'))
  const givingUp = new AbortController()
  const onProgress = ({ item }: { readonly item: string }) => {
    if (item === 'bingo') givingUp.abort()
  }
  const watching = { onProgress, signal: givingUp.signal }
  await expect(pictures({ kept, watching })).rejects.toThrow('aborted')
  expect(await pictures({ kept })).toEqual(await pictures({}))
  await kept.files?.removing
})
