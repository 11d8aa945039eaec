import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import sharp from 'sharp'
import { afterAll, describe, expect, it } from 'vitest'
import { createRasterizer } from '../../src/files/raster/raster.js'
import { mmToPixels } from '../../src/geometry.js'
import { wholePng } from '../files/png/whole-png.js'
import { hasProgram, runProgram } from '../files/system-program.js'
import { demoWeeks, drawDemoWeek } from './demo-sheets.js'

const dpi = 300
const folder = mkdtempSync(join(tmpdir(), 'oaktag-read-back-'))
afterAll(() => rmSync(folder, { recursive: true }))

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

/** Words that tesseract finds in a PNG, with the middle of each in pixels. */
function readWords(png: string): readonly ReadWord[] {
  const out = png.replace(/\.png$/, '')
  runProgram('tesseract', [png, out, '--psm', '11', '--dpi', String(dpi), 'tsv'], { OMP_THREAD_LIMIT: '1' })
  const rows = readFileSync(`${out}.tsv`, 'utf8').split('\n').slice(1)
  return rows.flatMap(row => {
    const [, , , , , , left, top, width, height, , text = ''] = row.split('\t')
    if (text.trim() === '') return []
    return [{ text: text.trim(), x: Number(left) + Number(width) / 2, y: Number(top) + Number(height) / 2 }]
  })
}

describe.runIf(hasProgram('tesseract'))('an independent reader (tesseract)', () => {
  it('reads at least 95 % of the unmarked card words from the PNG sheets', async () => {
    const rasterizer = createRasterizer(dpi)
    const missed: string[] = []
    let cards = 0
    for (const week of demoWeeks)
      for (const { printed } of await drawDemoWeek(week)) {
        if (!['open-sort', 'call-cards'].includes(printed.layout)) continue
        for (const sheet of printed.sheets.filter(each => each.side === 'front' && each.pieces.length > 0)) {
          const png = join(folder, `${week}-${printed.name}-${sheet.number}.png`)
          const scale = READABLE_X_HEIGHT_PX / mmToPixels(sheet.pieces[0]!.piece.xHeightMm!, dpi)
          const sheetPng = wholePng(await rasterizer.draw(sheet), dpi)
          writeFileSync(
            png,
            await sharp(sheetPng)
              .resize({ width: Math.round(mmToPixels(sheet.widthMm, dpi) * scale) })
              .png()
              .toBuffer(),
          )
          const read = readWords(png)
          for (const { piece, xMm, yMm } of sheet.pieces) {
            const [left, top, right, bottom] = [xMm, yMm, xMm + piece.widthMm, yMm + piece.heightMm].map(
              mm => mmToPixels(mm, dpi) * scale,
            ) as [number, number, number, number]
            const texts = read
              .filter(({ x, y }) => x > left && x < right && y > top && y < bottom)
              .map(({ text }) => text.toLowerCase())
            cards++
            if (!texts.includes(piece.text[0]!.toLowerCase())) missed.push(piece.text[0]!)
          }
        }
      }
    expect(cards).toBeGreaterThan(100)
    expect(missed.length / cards, `not read: ${missed.join(', ')}`).toBeLessThanOrEqual(0.05)
  })
})
