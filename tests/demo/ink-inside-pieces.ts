import { describe, expect, it } from 'vitest'
import type { Pixels } from '../../src/files/png/pixels.js'
import { createRasterizer } from '../../src/files/raster/raster.js'
import { insetBox, mmToPixels } from '../../src/geometry.js'
import type { Sheet } from '../../src/sheets/sheet.js'
import { pixelBytes } from '../files/page-pixels.js'
import { demoWeeks, drawDemoWeek } from './demo-sheets.js'

const dpi = 150
/** Trimming by hand is good to about 1 mm (common practice, no source): no ink may come nearer to a cut. */
const clearMm = 1.5

/** How many inked pixels of the sheet's pieces lie anywhere but well inside a piece. */
async function strayInk(sheet: Sheet, draw: (sheet: Sheet) => Promise<Pixels>) {
  const drawn = await draw({ ...sheet, cuts: [], furniture: [] })
  const { widthPx, heightPx, channels } = drawn
  const bytes = pixelBytes(drawn)
  const allowed = new Uint8Array(widthPx * heightPx)
  for (const { piece, xMm, yMm } of sheet.pieces) {
    const box = insetBox({ xMm, yMm, widthMm: piece.widthMm, heightMm: piece.heightMm }, clearMm)
    const [left, top, right, bottom] = [box.xMm, box.yMm, box.xMm + box.widthMm, box.yMm + box.heightMm].map(
      mm => Math.round(mmToPixels(mm, dpi)),
    ) as [number, number, number, number]
    for (let y = top; y < bottom; y++) allowed.fill(1, y * widthPx + left, y * widthPx + right)
  }
  let inked = 0
  let stray = 0
  for (let pixel = 0; pixel < allowed.length; pixel++) {
    if (bytes[pixel * channels]! > 200) continue
    inked++
    if (allowed[pixel] === 0) stray++
  }
  return { inked, stray }
}

export function keepInkInsidePieces(): void {
  describe.each(demoWeeks)('every sheet of the %s week, rasterised', week => {
    it(`has all ink of its pieces at least ${clearMm} mm inside them`, async () => {
      const rasterizer = createRasterizer(dpi)
      for (const { printed, prepared } of await drawDemoWeek(week)) {
        const bleeds = prepared.job.item.back === 'pattern'
        for (const sheet of printed.sheets.filter(each => each.pieces.length > 0)) {
          if (bleeds && sheet.side === 'back') continue
          const { inked, stray } = await strayInk(sheet, each => rasterizer.draw(each))
          expect(inked, `${sheet.title} shows its pieces`).toBeGreaterThan(100)
          expect(stray, `${sheet.title}: pixels of ink near or over a cut`).toBe(0)
        }
      }
    })
  })
}
