import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import sharp from 'sharp'
import { afterAll, describe, expect, it } from 'vitest'
import { createRasterizer } from '../../src/files/raster/raster.js'
import { mmToPixels } from '../../src/geometry.js'
import type { Sheet } from '../../src/sheets/sheet.js'
import { wholePng } from '../files/png/whole-png.js'
import { hasProgram, runProgram } from '../files/system-program.js'
import { demoWeeks, drawDemoWeek } from './demo-sheets.js'

const dpi = 300
interface ReadWord {
  readonly text: string
  readonly x: number
  readonly y: number
}

/**
 * tesseract is trained on the type of books: its handbook asks for letters some 20 to 30 pixels high, and card words
 * at 300 DPI are four times that. The sheets are shrunk to its measure before it reads them.
 */
const READABLE_X_HEIGHT_PX = 22

/**
 * The words that tesseract finds in each of the PNGs, with the middle of each in pixels. It reads them all in one run, so
 * that it opens what it has learnt once.
 */
function readWords(folder: string, pngs: readonly string[]): readonly (readonly ReadWord[])[] {
  const [list, out] = [join(folder, 'sheets.txt'), join(folder, 'read')]
  writeFileSync(list, pngs.join('\n'))
  runProgram('tesseract', [list, out, '--psm', '11', '--dpi', String(dpi), 'tsv'], { OMP_THREAD_LIMIT: '1' })
  const rows = readFileSync(`${out}.tsv`, 'utf8').split('\n').slice(1)
  const read = pngs.map((): ReadWord[] => [])
  for (const row of rows) {
    const [, page, , , , , left, top, width, height, , text = ''] = row.split('\t')
    if (text.trim() === '') continue
    const [x, y] = [Number(left) + Number(width) / 2, Number(top) + Number(height) / 2]
    read[Number(page) - 1]!.push({ text: text.trim(), x, y })
  }
  return read
}

/** A sheet of cards as a PNG file of tesseract's measure. */
interface SheetToRead {
  readonly png: string
  readonly sheet: Sheet
  readonly pixelsPerMm: number
}

async function sheetsToRead(folder: string): Promise<readonly SheetToRead[]> {
  const rasterizer = createRasterizer(dpi)
  const found: SheetToRead[] = []
  for (const week of demoWeeks)
    for (const { printed } of await drawDemoWeek(week)) {
      if (!['open-sort', 'call-cards'].includes(printed.layout)) continue
      for (const sheet of printed.sheets.filter(each => each.side === 'front' && each.pieces.length > 0)) {
        const png = join(folder, `${week}-${printed.name}-${sheet.number}.png`)
        const scale = READABLE_X_HEIGHT_PX / mmToPixels(sheet.pieces[0]!.piece.xHeightMm!, dpi)
        const sheetPng = wholePng(await rasterizer.draw(sheet), dpi)
        const width = Math.round(mmToPixels(sheet.widthMm, dpi) * scale)
        writeFileSync(png, await sharp(sheetPng).resize({ width }).png().toBuffer())
        found.push({ png, sheet, pixelsPerMm: mmToPixels(1, dpi) * scale })
      }
    }
  return found
}

export function readBack(): void {
  describe.runIf(hasProgram('tesseract'))('an independent reader (tesseract)', () => {
    const folder = mkdtempSync(join(tmpdir(), 'oaktag-read-back-'))
    afterAll(() => rmSync(folder, { recursive: true }))

    it('reads at least 95 % of the unmarked card words from the PNG sheets', async () => {
      const sheets = await sheetsToRead(folder)
      const read = readWords(
        folder,
        sheets.map(({ png }) => png),
      )
      const missed: string[] = []
      let cards = 0
      for (const [index, { sheet, pixelsPerMm }] of sheets.entries())
        for (const { piece, xMm, yMm } of sheet.pieces) {
          const [left, top, right, bottom] = [xMm, yMm, xMm + piece.widthMm, yMm + piece.heightMm].map(
            mm => mm * pixelsPerMm,
          ) as [number, number, number, number]
          const texts = read[index]!.filter(({ x, y }) => x > left && x < right && y > top && y < bottom).map(
            ({ text }) => text.toLowerCase(),
          )
          cards++
          if (!texts.includes(piece.text[0]!.toLowerCase())) missed.push(piece.text[0]!)
        }
      expect(cards).toBeGreaterThan(100)
      expect(missed.length / cards, `not read: ${missed.join(', ')}`).toBeLessThanOrEqual(0.05)
    })
  })
}
