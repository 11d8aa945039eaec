import { describe, expect, it } from 'vitest'
import { layouts } from '../../layouts/index.js'
import type { PrintedItem } from '../../src/files/printed-plan.js'
import { createRasterizer } from '../../src/files/raster/raster.js'
import { insetBox, mmToPixels } from '../../src/geometry.js'
import { darknessOf } from '../files/page-pixels.js'
import { countLayouts, layoutsNeeded } from './count-layouts.js'
import { exampleItems, withKeys } from './example-items.js'
import { isSmallGreyAndAtTheFoot, setMarkOf, textOnPieces, tooSmall } from './large-on-pieces.js'
import { marshWithTag, piecesOf, printItem } from './print-item.js'

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
  const written = withKeys(item, `size: ${size}`, `paper: ${paper}`)
  let made: Promise<PrintedItem> | undefined
  const printed = () => {
    made ??= printItem(written, marshWithTag)
    return made
  }

  // In large print other divisions of the sheet are tried, which lay out anew.
  if (size === 'normal')
    it('has each shape of its pieces laid out once', async () => {
      const { printed, count } = await countLayouts([written], marshWithTag)
      made = Promise.resolve(printed[0]!)
      expect(count).toBe(layoutsNeeded(printed[0]!, written))
    })

  it('has all its ink inside the pieces, clear of the cuts', async () => {
    expect(await strayInk(await printed())).toBe(0)
  })

  it('has its words in one size', async () => {
    const sizesOfWords = new Set(piecesOf(await printed()).flatMap(piece => piece.fontPt ?? []))
    expect(sizesOfWords.size).toBeLessThanOrEqual(1)
  })

  it('has no line of text that leaves its piece or shortens what it says', async () => {
    const wrong = piecesOf(await printed()).flatMap(({ widthMm, art }) =>
      art.flatMap(({ art: { text }, xMm }) =>
        text.filter(run => {
          const left = xMm + run.xMm
          return left <= clearMm || left + run.widthMm >= widthMm - clearMm || run.text.includes('…')
        }),
      ),
    )
    expect(wrong).toEqual([])
  })

  it('has set marks that are small, grey and at the foot', async () => {
    const marks = piecesOf(await printed()).map(setMarkOf)
    expect(marks.filter(mark => !isSmallGreyAndAtTheFoot(mark))).toEqual([])
  })

  if (size !== 'large') return
  it('has nothing small on a piece but its set mark, which is not for the child', async () => {
    expect(piecesOf(await printed()).length).toBeGreaterThan(0)
    expect(tooSmall(textOnPieces(await printed()), { kind: 'large' })).toEqual([])
  })
})
