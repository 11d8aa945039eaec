import { mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import sharp from 'sharp'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Manifest, manifestItem } from '../../../src/files/manifest.js'
import { sheetToSvg } from '../../../src/files/page/svg.js'
import type { PrintedItem } from '../../../src/files/printed-plan.js'
import { proofPage } from '../../../src/files/proof/proof-page.js'
import { keptSections, proofSection } from '../../../src/files/proof/proof-section.js'
import { createRasterizer } from '../../../src/files/raster/raster.js'
import { printInChromium } from '../chromium.js'
import { item, sheet } from '../marsh-sheets.js'
import { pixelBytes } from '../page-pixels.js'
import { hasProgram, runProgram } from '../system-program.js'

const letter = { name: 'letter', widthMm: 215.9, heightMm: 279.4 }
const cards = item()
const boards = item({
  name: 'bingo',
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
  const entries = items.map(made => manifestItem(made, { formats: ['svg'], dpi: 300 }))
  return {
    oaktag: '0.1.0',
    title: 'Along the <marsh>',
    class: 'Room 7, Heron Lane School',
    seed: 12,
    items: entries,
  }
}

function page(items: readonly PrintedItem[] = [cards, boards]): string {
  return proofPage(manifest(items), new Map(items.map(made => [made.name, proofSection(made)])))
}

describe('the proof page', () => {
  it('needs no network and no other file', () => {
    const references = [...page().matchAll(/(?:href|src)="([^"]*)"|url\(([^)]*)\)|@import/g)].map(
      match => match[1],
    )
    expect(references.filter(reference => !reference?.startsWith('#'))).toEqual([])
    expect(page()).not.toMatch(/<(script|link|iframe|img)\b/)
  })

  it('points with every inner link at something that is there, and holds no id twice', () => {
    const ids = [...page().matchAll(/ id="([^"]*)"/g)].map(match => match[1])
    expect(new Set(ids).size).toBe(ids.length)
    const targets = [...page().matchAll(/href="#([^"]*)"/g)].map(match => match[1])
    expect(targets.filter(target => !ids.includes(target))).toEqual([])
  })

  it('can be worked from the keyboard: every sheet and fold is a link or a summary, and says what it does', () => {
    const html = page()
    expect(html).not.toMatch(/\son\w+=|tabindex/)
    const shown = [...html.matchAll(/<a href="#sheet-[^"]*" aria-label="([^"]*)">/g)].map(match => match[1])
    expect(shown).toHaveLength(cards.sheets.length + boards.sheets.length)
    expect(shown[1]).toBe('Board 1, page 1: show in true size')
    expect(html.match(/<details>/g)).toHaveLength(html.match(/<summary>[^<]+<\/summary>/g)!.length)
    expect(html.match(/>make small again<\/a>/g)).toHaveLength(shown.length)
  })

  it('shows every sheet, and folds away what gives the game away', () => {
    const html = page()
    for (const made of [cards, boards])
      for (const { title } of made.sheets) expect(html).toContain(`<title>${title}</title>`)
    const [, fold] = /<details>(.*?)<\/details>/s.exec(html)!
    expect(fold).toContain('Caller’s sheet')
    expect(fold).not.toContain('<title>Board 1</title>')
  })

  it('says what to print, for whom, on which paper and how', () => {
    expect(page()).toContain(
      '<th scope="row"><a href="#item-bingo">bingo</a></th><td>Otters</td><td>1 on card stock, both sides, 1 on paper</td>' +
        '<td>letter</td><td>Print on card stock &amp; trim.</td>',
    )
  })

  it('lists what is to be known of an item', () => {
    const notes = ['Print on both sides.', 'Words are 48 pt: <reed> decides.']
    expect(page([{ ...boards, notes }])).toContain(
      '<td><ul><li>Print on both sides.</li><li>Words are 48 pt: &lt;reed&gt; decides.</li></ul></td>',
    )
  })

  it('escapes the teacher’s words', () => {
    expect(page()).toContain('<h1>Along the &lt;marsh&gt;</h1>')
  })

  it('hands an item on to the page of a later run as it was', async () => {
    const folder = await mkdtemp(join(tmpdir(), 'oaktag-proof-'))
    await writeFile(join(folder, 'index.html'), page())
    const kept = await keptSections(manifest([cards, boards]).items, folder)
    await rm(folder, { recursive: true })
    expect(proofPage(manifest([cards, boards]), kept)).toBe(page())
  })

  it('links to an item’s files where the last run’s page is gone', async () => {
    const kept = await keptSections(manifest([cards]).items, join(tmpdir(), 'nowhere'))
    expect(kept.get('word-cards')).toContain('<a href="word-cards/word-cards-01.svg">')
  })
})

describe('printed from Chromium', () => {
  let folder: string
  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), 'oaktag-print-'))
    await writeFile(join(folder, 'index.html'), page())
    await writeFile(join(folder, 'sheet.svg'), sheetToSvg(sheet()))
  })
  afterAll(() => rm(folder, { recursive: true }))
  const programs = ['chromium', 'pdfinfo', 'pdftoppm'].every(hasProgram)

  async function printedSizes(file: string, fragment = ''): Promise<string[]> {
    const pdf = join(folder, 'printed.pdf')
    await printInChromium(join(folder, file), pdf, fragment)
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
    runProgram('pdftoppm', ['-r', '300', '-gray', '-png', '-singlefile', pdf, join(folder, 'printed')])
    const ours = await createRasterizer(300).draw(sheet())
    const { data, info } = await sharp(join(folder, 'printed.png'))
      .toColourspace('b-w')
      .raw()
      .toBuffer({ resolveWithObject: true })
    const expected = inkBounds(pixelBytes(ours), ours.widthPx)
    const found = inkBounds(data, info.width)
    for (const [index, edge] of expected.entries())
      expect(Math.abs(found[index]! - edge)).toBeLessThanOrEqual(1)
  }
})

const roughly = (size: string): string =>
  size
    .split(' x ')
    .map(side => Math.round(Number(side)))
    .join(' x ')

/** Left, top, right and bottom edge in pixels of the ink between the cut lines: the frames of the two cards. */
function inkBounds(grey: Uint8Array, widthPx: number): number[] {
  const rows = new Set<number>()
  const columns = new Set<number>()
  for (let at = 0; at < grey.length; at++) {
    const [x, y] = [at % widthPx, Math.floor(at / widthPx)]
    // Off the cut lines, which run from edge to edge at 12.7 mm from the top and 70 mm from the left.
    if (grey[at]! < 128 && y > 160 && y < 1000 && (x < 800 || x > 860)) {
      rows.add(y)
      columns.add(x)
    }
  }
  return [Math.min(...columns), Math.min(...rows), Math.max(...columns), Math.max(...rows)]
}
