import { describe, expect, it } from 'vitest'
import { layouts } from '../../layouts/index.js'
import type { PrintedItem } from '../../src/files/printed-plan.js'
import { createRasterizer } from '../../src/files/raster/raster.js'
import { insetBox, mmToPixels, mmToPoints } from '../../src/geometry.js'
import { darknessOf } from '../files/page-pixels.js'
import { exampleItems, withKeys } from './example-items.js'
import { piecesOf, printItem } from './print-item.js'

/** What holds of every layout of loose pieces, on one paper and the other, in normal and in large print. */
const items = layouts.filter(layout => layout.kind === 'pieces').flatMap(exampleItems)
const sizes = ['normal', 'large']
const papers = ['letter', 'a4']
const cases = items.flatMap((item, row) =>
  sizes.map((size, index) => ({ item, size, paper: papers[(index + row) % 2]! })),
)

const dpi = 100
/** Trimming by hand is good to about 1 mm (common practice, no source): no ink may come nearer to a cut. */
const clearMm = 1.5
/** `large` is 24 points of a face whose x is half its em; Andika's x is a little more. */
const largePt = 23

/** Less dark than this is paper. */
const inked = 55

async function strayInk(printed: PrintedItem): Promise<number> {
  const rasterizer = createRasterizer(dpi)
  let stray = 0
  for (const sheet of printed.sheets.filter(each => each.pieces.length > 0)) {
    const { width, values } = darknessOf(await rasterizer.draw({ ...sheet, cuts: [], furniture: [] }))
    for (const { piece, xMm, yMm } of sheet.pieces) {
      const { widthMm, heightMm } = piece
      const { xMm: left, yMm: top, ...inside } = insetBox({ xMm, yMm, widthMm, heightMm }, clearMm)
      const [firstX, firstY, endX, endY] = [left, top, left + inside.widthMm, top + inside.heightMm].map(mm =>
        Math.round(mmToPixels(mm, dpi)),
      ) as [number, number, number, number]
      // What may have ink is wiped: what is left is stray.
      for (let y = firstY; y < endY; y++) values.fill(0, y * width + firstX, y * width + endX)
    }
    for (let pixel = 0; pixel < values.length; pixel++) if (values[pixel]! >= inked) stray++
  }
  return stray
}

describe.each(cases)('$item, size: $size, on $paper', ({ item, size, paper }) => {
  let made: Promise<PrintedItem> | undefined
  const printed = () => {
    made ??= printItem(withKeys(item, `size: ${size}`, `paper: ${paper}`))
    return made
  }

  it('has all its ink inside the pieces, clear of the cuts', async () => {
    expect(await strayInk(await printed())).toBe(0)
  })

  it('has its words in one size', async () => {
    const sizesOfWords = new Set(piecesOf(await printed()).flatMap(piece => piece.fontPt ?? []))
    expect(sizesOfWords.size).toBeLessThanOrEqual(1)
  })

  it('has no line of text that leaves its piece or shortens what it says', async () => {
    for (const piece of piecesOf(await printed()))
      for (const { art, xMm } of piece.art)
        for (const run of art.text) {
          expect(xMm + run.xMm).toBeGreaterThan(clearMm)
          expect(xMm + run.xMm + run.widthMm).toBeLessThan(piece.widthMm - clearMm)
          expect(run.text).not.toContain('…')
        }
  })

  if (size !== 'large') return
  it('has nothing small on a piece but its set mark, which is not for the child', async () => {
    for (const piece of piecesOf(await printed()))
      for (const { art } of piece.art)
        for (const run of art.text)
          if (run.text !== piece.setMark) expect(mmToPoints(run.sizeMm), run.text).toBeGreaterThan(largePt)
  })
})
