import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import sharp from 'sharp'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { manifestOf } from '../../src/files/manifest.js'
import { sheetToSvg } from '../../src/files/page/svg.js'
import { sheetsToPdf } from '../../src/files/pdf/pdf.js'
import type { PrintedItem } from '../../src/files/printed-plan.js'
import { proofPage } from '../../src/files/proof/proof-page.js'
import { proofParts } from '../../src/files/proof/proof-parts.js'
import { createRasterizer } from '../../src/files/raster/raster.js'
import { mmToPoints } from '../../src/geometry.js'
import type { Sheet } from '../../src/sheets/sheet.js'
import { type Browser, openBrowser } from '../files/browser.js'
import { type Band, pageInGreys } from '../files/pdf/page-in-greys.js'
import { wholePng } from '../files/png/whole-png.js'
import { expectSameInk } from '../files/same-ink.js'
import { hasProgram, runProgram } from '../files/system-program.js'
import type { Coverage } from '../pieces/pixels.js'
import { type demoWeeks, drawFirstAndCover } from './demo-sheets.js'
import { measureRulers } from './ruler-pixels.js'

const folder = mkdtempSync(join(tmpdir(), 'oaktag-true-size-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))

const printing = ['chromium', 'pdfinfo', 'pdftoppm'].every(hasProgram)
let browser: Browser | undefined
beforeAll(async () => {
  if (printing) browser = await openBrowser()
})
afterAll(() => browser?.close())

interface Cover {
  readonly item: PrintedItem
  readonly sheet: Sheet
  readonly page: number
  /** Where the rulers stand, with room for them to be elsewhere. */
  readonly band: Band
}

const covers = new Map<string, Promise<Cover>>()

/** The page with the rulers of a demo item, which is drawn once. */
function coverOf(week: (typeof demoWeeks)[number], name: string): Promise<Cover> {
  const cover = covers.get(name) ?? drawCover(week, name)
  covers.set(name, cover)
  return cover
}

async function drawCover(week: (typeof demoWeeks)[number], name: string): Promise<Cover> {
  const printed = await drawFirstAndCover(week, name)
  const rulersOn = ({ furniture }: Sheet) =>
    furniture.find(({ art }) => art.text.some(run => run.text.startsWith('Measure this: 100 mm')))
  const page = printed.sheets.findIndex(sheet => rulersOn(sheet) !== undefined) + 1
  const sheet = printed.sheets[page - 1]!
  const { yMm, art } = rulersOn(sheet)!
  return { item: printed, sheet, page, band: { topMm: yMm - 20, heightMm: art.heightMm + 40 } }
}

interface SheetInFiles {
  readonly png: Uint8Array
  /** What another program reads in the PNG. */
  readonly pixels: Coverage
  /** The path of a PDF of this one page. */
  readonly pdf: string
}

const written = new Map<Sheet, Promise<SheetInFiles>>()

/** A sheet as PNG at 300 DPI and as PDF, each made and read once. */
function filesOf(sheet: Sheet): Promise<SheetInFiles> {
  const files = written.get(sheet) ?? writeFilesOf(sheet, join(folder, `sheet-${written.size}.pdf`))
  written.set(sheet, files)
  return files
}

async function writeFilesOf(sheet: Sheet, pdf: string): Promise<SheetInFiles> {
  writeFileSync(pdf, await sheetsToPdf({ title: 'sheet', parts: [{ title: 'sheet', sheets: [sheet] }] }))
  const png = wholePng(await createRasterizer(300).draw(sheet), 300)
  return { png, pixels: await pixelsOf(png), pdf }
}

async function pixelsOf(png: Uint8Array): Promise<Coverage> {
  const { data, info } = await sharp(png)
    .flatten({ background: '#ffffff' })
    .toColourspace('b-w')
    .raw()
    .toBuffer({ resolveWithObject: true })
  return { width: info.width, height: info.height, values: data.map(value => 255 - value) }
}

/** The upper left part of a picture, as large as another. */
function cropped({ width, values }: Coverage, to: Coverage): Coverage {
  const rows = Array.from({ length: to.height }, (_, y) => values.subarray(y * width, y * width + to.width))
  return { ...to, values: Buffer.concat(rows) }
}

/** The rulers of a PDF's page, in mm, rasterised by poppler at 600 DPI; 0.04 mm to the pixel. */
function rulersInPdf(pdf: string, band: Band): readonly [number, number] {
  const { metricPx, inchPx } = measureRulers(pageInGreys(pdf, 600, band), 600)
  return [(metricPx / 600) * 25.4, (inchPx / 600) * 25.4]
}

function expectTrue([metricMm, inchMm]: readonly [number, number]): void {
  expect(Math.abs(metricMm - 100), `100 mm measure ${metricMm.toFixed(3)} mm`).toBeLessThanOrEqual(0.1)
  expect(Math.abs(inchMm - 101.6), `4 in measure ${inchMm.toFixed(3)} mm`).toBeLessThanOrEqual(0.1)
}

/** Chromium rounds a page's sides to whole CSS pixels, 0.75 pt. */
function expectOnePage(pdf: string, sizePt: readonly [number, number]): void {
  const info = runProgram('pdfinfo', ['-l', '99', pdf])
  const sizes = [...info.matchAll(/Page\s+\d+ size:\s+([\d.]+) x ([\d.]+) pts/g)]
  expect(sizes).toHaveLength(1)
  const [, width, height] = sizes[0]!
  expect(Math.abs(Number(width) - sizePt[0])).toBeLessThanOrEqual(0.75)
  expect(Math.abs(Number(height) - sizePt[1])).toBeLessThanOrEqual(0.75)
}

describe.each([
  ['letter', 'marsh', 'word-cards', [612, 792]],
  ['a4, landscape', 'harbour', 'bingo', [mmToPoints(297), mmToPoints(210)]],
] as const)('the rulers on a cover of the demo (%s)', (_paper, week, name, sizePt) => {
  it('measure 100.0 ± 0.1 mm and 4 in in the PNG, by the pixels per metre that it states', async () => {
    const { png, pixels } = await filesOf((await coverOf(week, name)).sheet)
    // PNG (W3C), 11.3.4.3: pixels per unit along X stand first in the chunk, four bytes, most significant first.
    const perMetre = Buffer.from(png).readUInt32BE(Buffer.from(png).indexOf('pHYs') + 4)
    const { metricPx, inchPx } = measureRulers(pixels, 300)
    expectTrue([(metricPx / perMetre) * 1000, (inchPx / perMetre) * 1000])
  })

  it.runIf(hasProgram('pdftoppm'))('measure the same in the PDF', async () => {
    const { sheet, band } = await coverOf(week, name)
    const { pdf } = await filesOf(sheet)
    expectTrue(rulersInPdf(pdf, band))
  })

  it.runIf(hasProgram('pdftoppm'))(
    'stand on a page that looks the same in PDF and PNG, but for anti-aliasing',
    async () => {
      const { sheet, item } = await coverOf(week, name)
      for (const each of [sheet, item.sheets[0]!]) {
        const { pixels: ours, pdf } = await filesOf(each)
        // Poppler's page may be a pixel larger.
        const theirs = cropped(pageInGreys(pdf, 300), ours)
        // A cover is small type for the most part, whose edges two renderers grey most differently: 2.1 % of all ink.
        expectSameInk(ours.values, theirs.values, ours.width, 0.025)
      }
    },
  )

  it.runIf(printing)(
    'measure the same when Chromium prints the proof page, on pages of true size',
    async () => {
      const { item, page, band } = await coverOf(week, name)
      const entries = [manifestOf(item, { formats: ['svg'], dpi: 300 })]
      const manifest = { oaktag: '0.1.0', title: week, class: '', seed: 1, items: entries }
      const index = join(folder, 'index.html')
      writeFileSync(index, proofPage({ manifest, parts: proofParts([item]), warnings: [] }))
      const pdf = join(folder, 'proof.pdf')
      await browser!.printToFile(index, pdf, `#sheet-${item.name}-${page}`)
      expectOnePage(pdf, sizePt)
      expectTrue(rulersInPdf(pdf, band))
    },
  )

  it.runIf(printing)(
    'measure the same when Chromium prints the SVG file, on a page of true size',
    async () => {
      const { sheet, band } = await coverOf(week, name)
      const svg = join(folder, 'cover.svg')
      writeFileSync(svg, sheetToSvg(sheet))
      const pdf = join(folder, 'svg.pdf')
      await browser!.printToFile(svg, pdf)
      expectOnePage(pdf, sizePt)
      expectTrue(rulersInPdf(pdf, band))
    },
  )
})
