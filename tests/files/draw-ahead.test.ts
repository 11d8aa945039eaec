/** What is drawn ahead of an item that is to be written, as where a plan is watched. */
import { beforeEach, describe, expect, it } from 'vitest'
import { drawAhead } from '../../src/files/draw-ahead.js'
import type { PlacedItem, PrintedItem } from '../../src/files/printed-plan.js'
import type { KeptFiles } from '../../src/files/write-items.js'
import { writePlan } from '../../src/files/write-plan.js'
import type { Paper } from '../../src/plan/plan.js'
import { asToDraw } from '../../src/sheets/sheet.js'
import { folderWith } from '../pipeline/plan-folder.js'
import { a4, art, item, plan, ring, sheet, triangle } from './marsh-sheets.js'
import { tellingThread } from './thread/telling-thread.js'

/** What the thread is asked to draw ahead, and what to write. */
let ahead: string[]
let written: string[]
let isReady: boolean
let kept: KeptFiles
beforeEach(() => {
  ;[ahead, written, isReady] = [[], [], true]
  const thread = tellingThread({
    aheadOne: page => ahead.push(page),
    writtenOne: page => written.push(page),
    isReady: () => isReady,
  })
  kept = { thread }
})

const screen: Paper = { name: 'screen', widthMm: 320, heightMm: 180, screen: true }
const cards = item({ sheets: [sheet(), sheet({ furniture: [] })] })
const boards = item({ name: 'bingo', paper: screen, sheets: [sheet({ cuts: [] })] })

const placed = (printed: PrintedItem): PlacedItem => ({ ...printed, sheets: printed.sheets.map(asToDraw) })

async function write(items: readonly PrintedItem[], outFolder: string): Promise<void> {
  const request = { outFolder, formats: ['svg', 'png'], dpi: 50, jobs: 1, version: '0.1.0', kept } as const
  expect(await writePlan({ ...request, printed: plan({ items }) })).toMatchObject({ ok: true, problems: [] })
}

describe('the pages of an item that is to be written', () => {
  it('are drawn ahead as they will be asked for: a printed page in the resolution of the run, a screen’s in its own', async () => {
    for (const each of [cards, boards]) drawAhead(placed(each), 50, kept)
    await write([cards, boards], folderWith({}))
    expect(ahead).toHaveLength(3)
    expect(ahead).toEqual(written)
  })

  it('are not where the last run left them as they are now', async () => {
    const out = folderWith({})
    await write([cards, boards], out)
    const [first, second] = cards.sheets
    const changed = { ...second!, furniture: [{ art: art([ring, triangle]), xMm: 20, yMm: 280 }] }
    drawAhead(placed({ ...cards, sheets: [first!, changed] }), 50, kept)
    drawAhead(placed(boards), 50, kept)
    written = []
    await write([{ ...cards, sheets: [first!, changed] }, boards], out)
    expect(ahead).toHaveLength(1)
    expect(ahead).toEqual(written)
  })

  it('are again where they were left in another resolution, or under another item’s name', async () => {
    await write([cards], folderWith({}))
    drawAhead(placed(cards), 60, kept)
    drawAhead(placed({ ...cards, name: 'memory' }), 50, kept)
    expect(ahead).toHaveLength(4)
  })

  it('are not looked at where no thread is ready', () => {
    const unasked = { ...asToDraw(sheet()), draw: () => expect.unreachable() }
    isReady = false
    drawAhead({ ...item(), paper: a4, sheets: [unasked] }, 50, kept)
    drawAhead({ ...item(), paper: a4, sheets: [unasked] }, 50, { thread: undefined })
    expect(ahead).toEqual([])
  })
})
