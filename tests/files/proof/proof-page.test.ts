import { createHash } from 'node:crypto'
import { mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { machineFiles } from '../../../src/files/folder/file-system.js'
import { type Manifest, manifestOf } from '../../../src/files/manifest.js'
import { sheetToSvg } from '../../../src/files/page/svg.js'
import type { PrintedItem } from '../../../src/files/printed-plan.js'
import { keptParts } from '../../../src/files/proof/kept-parts.js'
import { proofPage } from '../../../src/files/proof/proof-page.js'
import { proofParts } from '../../../src/files/proof/proof-parts.js'
import { createRasterizer } from '../../../src/files/raster/raster.js'
import type { Coverage } from '../../pieces/pixels.js'
import { type Browser, openBrowser } from '../browser.js'
import { item, sheet } from '../marsh-sheets.js'
import { darknessOf } from '../page-pixels.js'
import { pageInGreys } from '../pdf/page-in-greys.js'
import { hasProgram, runProgram } from '../system-program.js'
import { aSheetWithText } from './sheet-with-text.js'

const letter = { name: 'letter', widthMm: 215.9, heightMm: 279.4 }
const cards = item()
const boards = item({
  name: 'bingo',
  title: 'Bingo',
  layout: 'bingo',
  group: 'Otters',
  paper: letter,
  notes: ['Print on card stock & trim.'],
  sheets: [
    sheet({ title: 'Board 1', ...size(letter) }),
    sheet({ title: 'Board 1, back', side: 'back', ...size(letter) }),
    sheet({ title: 'Caller’s sheet', kind: 'caller', pieces: [], ...size(letter) }),
  ],
})

function size({ widthMm, heightMm }: { widthMm: number; heightMm: number }) {
  return { widthMm, heightMm }
}

function manifest(items: readonly PrintedItem[]): Manifest {
  const entries = items.map(made => manifestOf(made, { formats: ['svg'], dpi: 300 }))
  return {
    oaktag: '0.1.0',
    title: 'Along the <marsh>',
    class: 'Room 7, Heron Lane School',
    seed: 12,
    items: entries,
  }
}

function page(items: readonly PrintedItem[] = [cards, boards], warnings: readonly string[] = []): string {
  return proofPage({ manifest: manifest(items), parts: proofParts(items), warnings })
}

describe('the proof page', () => {
  it('needs no network and no other file, and may do nothing but what is its own', () => {
    const references = [...page().matchAll(/(?:href|src)="([^"]*)"|url\(([^)]*)\)|@import/g)].map(
      match => match[1],
    )
    expect(references.filter(reference => !reference?.startsWith('#'))).toEqual([])
    expect(page()).not.toMatch(/<(link|iframe|img|object|embed)\b|<script[^>]/)
    const policy = /Content-Security-Policy" content="([^"]*)"/.exec(page())![1]!
    expect(policy).toContain("default-src 'none'")
    expect(policy).not.toMatch(/unsafe|\*|https?:/)
    for (const tag of ['script', 'style']) {
      const [, text] = new RegExp(`<${tag}>(.*?)</${tag}>`, 's').exec(page())!
      const digest = createHash('sha256').update(text!).digest('base64')
      expect(policy).toContain(`${tag}-src 'sha256-${digest}'`)
    }
  })

  it('points with every inner link at something that is there, and holds no id twice', () => {
    const ids = [...page().matchAll(/ id="([^"]*)"/g)].map(match => match[1])
    expect(new Set(ids).size).toBe(ids.length)
    const targets = [...page().matchAll(/href="#([^"]*)"/g)].map(match => match[1])
    expect(targets.filter(target => !ids.includes(target))).toEqual([])
  })

  it('shows her sheets before anything else, under their titles in plain words', () => {
    const html = page([cards, boards], ['The mark is faint. Choose a darker one.'])
    const order = ['<main', 'Word cards</a>', 'Bingo</a>', '</main>', 'id="twice"', 'id="how"', 'Take care']
    const places = order.map(part => html.indexOf(part))
    expect(places.every(place => place > 0)).toBe(true)
    expect(places).toEqual(places.toSorted((a, b) => a - b))
    expect(html).toContain('<span class="for">Otters</span>')
    expect(html).toContain('<span class="for">whole class</span>')
  })

  it('says how many sheets of which stock, for the set and in all, and has a button for each set', () => {
    const html = page()
    expect(html).toContain('1 sheet of card (both sides) and 1 of paper, size letter')
    expect(html).toContain('2 sets: 2 sheets of card (1 of them on both sides) and 1 of paper.')
    for (const name of ['word-cards', 'bingo']) expect(html).toContain(`data-print="item-${name}"`)
  })

  it('tells what is to be looked at twice, and of nothing where there is nothing', () => {
    const html = page([cards], ['The mark on <x> is faint. Choose a darker one.'])
    expect(html).toContain('<a href="#twice">1 thing to look at twice</a>')
    expect(html).toContain('<li>The mark on &lt;x&gt; is faint. Choose a darker one.</li>')
    expect(page()).not.toContain('id="twice"')
  })

  it('can be worked from the keyboard: every sheet and fold is a link or a summary, and says what it does', () => {
    const html = page()
    expect(html).not.toMatch(/\son\w+=|tabindex="[^-]/)
    const shown = [...html.matchAll(/<a class="small" href="#sheet-[^"]*" aria-label="([^"]*)">/g)].map(
      match => match[1],
    )
    expect(shown).toHaveLength(cards.sheets.length + boards.sheets.length)
    expect(shown[1]).toBe('Board 1, page 1: show in true size')
    expect(html.match(/<details/g)).toHaveLength(html.match(/<summary>[^<]+<\/summary>/g)!.length)
    expect(html.match(/>make small again<\/a>/g)).toHaveLength(shown.length)
    expect(html.indexOf('<a class="skip" href="#sheets">')).toBeLessThan(html.indexOf('<header>'))
  })

  it('shows every sheet, and folds away what gives the game away', () => {
    const html = page()
    for (const made of [cards, boards])
      for (const { title } of made.sheets) expect(html).toContain(`<title>${title}</title>`)
    const [, fold] = /<details id="answers-bingo"[^>]*>(.*?)<\/details>/s.exec(html)!
    expect(fold).toContain('Caller’s sheet')
    expect(fold).not.toContain('<title>Board 1</title>')
  })

  it('lists what is to be known of a set, and folds away how its words came out', () => {
    const fittingNotes = ['Words are 48 pt: <reed> decides.']
    const html = page([{ ...boards, notes: ['Print on both sides.', ...fittingNotes], fittingNotes }])
    expect(html).toContain('<ul class="notes"><li>Print on both sides.</li></ul>')
    const [, fold] = /<details class="fitting">(.*?)<\/details>/s.exec(html)!
    expect(fold).toContain('<li>Words are 48 pt: &lt;reed&gt; decides.</li>')
  })

  it('escapes the teacher’s words', () => {
    expect(page()).toContain('<h1>Along the &lt;marsh&gt;</h1>')
  })

  it('hands an item on to the page of a later run as it was, with the outlines that it shares', async () => {
    const lettered = { ...cards, sheets: [await aSheetWithText()] }
    const items = [lettered, boards]
    const folder = await mkdtemp(join(tmpdir(), 'oaktag-proof-'))
    await writeFile(join(folder, 'index.html'), page(items))
    const parts = await keptParts(manifest(items).items, folder, machineFiles)
    await rm(folder, { recursive: true })
    expect(parts.definitions.size).toBeGreaterThan(10)
    expect(proofPage({ manifest: manifest(items), parts, warnings: [] })).toBe(page(items))
  })

  it('links to an item’s files where the last run’s page is gone', async () => {
    const { sections } = await keptParts(manifest([cards]).items, join(tmpdir(), 'nowhere'), machineFiles)
    expect(
      sections
        .get('word-cards')!
        .map(text => text.read())
        .join(''),
    ).toContain('<a href="word-cards/word-cards-01.svg">')
  })
})

describe('printed from Chromium', () => {
  const programs = ['chromium', 'pdfinfo', 'pdftoppm'].every(hasProgram)
  let folder: string
  let browser: Browser | undefined
  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), 'oaktag-print-'))
    await writeFile(join(folder, 'index.html'), page())
    await writeFile(join(folder, 'sheet.svg'), sheetToSvg(sheet()))
    if (programs) browser = await openBrowser()
  })
  afterAll(async () => {
    await browser?.close()
    await rm(folder, { recursive: true })
  })

  async function printedSizes(file: string, fragment = ''): Promise<string[]> {
    const pdf = join(folder, 'printed.pdf')
    await browser!.printToFile(join(folder, file), pdf, fragment)
    const info = runProgram('pdfinfo', ['-l', '99', pdf])
    return [...info.matchAll(/Page\s+\d+ size:\s+([\d.]+ x [\d.]+) pts/g)].map(match => match[1]!)
  }

  it.runIf(programs)(
    'the proof page gives a page of true size for each open sheet, and no blank one',
    async () => {
      // A4 is 595.28 × 841.89 pt, Letter 612 × 792; Chromium rounds a page to its own unit of 1/72 in or finer.
      const sizes = await printedSizes('index.html')
      expect(sizes.map(roughly)).toEqual(['595 x 842', '612 x 792', '612 x 792'])
    },
  )

  it.runIf(programs)('an item or a sheet that was chosen is printed alone', async () => {
    expect((await printedSizes('index.html', '#item-word-cards')).map(roughly)).toEqual(['595 x 842'])
    expect((await printedSizes('index.html', '#sheet-bingo-2')).map(roughly)).toEqual(['612 x 792'])
  })

  it.runIf(programs)('its ink stands where our PNG has it, to a pixel at 300 DPI', async () => {
    await printedSizes('index.html', '#sheet-word-cards-1')
    await expectSameInk(join(folder, 'printed.pdf'))
  })

  it.runIf(programs)('a sheet’s SVG is printed in true size', async () => {
    expect((await printedSizes('sheet.svg')).map(roughly)).toEqual(['595 x 842'])
    await expectSameInk(join(folder, 'printed.pdf'))
  })

  async function expectSameInk(pdf: string): Promise<void> {
    const expected = inkBounds(darknessOf(await createRasterizer(300).draw(sheet())))
    const found = inkBounds(pageInGreys(pdf, 300))
    for (const [index, edge] of expected.entries())
      expect(Math.abs(found[index]! - edge)).toBeLessThanOrEqual(1)
  }
})

const roughly = (size: string): string =>
  size
    .split(' x ')
    .map(side => Math.round(Number(side)))
    .join(' x ')

/**
 * Left, top, right and bottom edge in pixels of the ink between the cut lines, which run from edge to edge at 12.7 mm from
 * the top and 70 mm from the left: the frames of the two cards.
 */
function inkBounds({ width, values }: Coverage): readonly number[] {
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity]
  for (let y = 161; y < 1000; y++)
    for (let x = 0; x < width; x++) {
      if (values[y * width + x]! < 128 || (x >= 800 && x <= 860)) continue
      left = Math.min(left, x)
      top = Math.min(top, y)
      right = Math.max(right, x)
      bottom = Math.max(bottom, y)
    }
  return [left, top, right, bottom]
}
