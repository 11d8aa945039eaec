import { describe, expect, it } from 'vitest'
import { createRasterizer, type Rasterizer } from '../../src/files/raster/raster.js'
import { mmToPixels } from '../../src/geometry.js'
import type { PlacedArt } from '../../src/pieces/piece.js'
import { type PlacedPiece, pieceBox, type Sheet } from '../../src/sheets/sheet.js'
import { darknessOf } from '../files/page-pixels.js'
import { type Coverage, comeWithin, someInked } from '../pieces/pixels.js'
import { demoWeeks, drawDemoWeek } from './demo-sheets.js'

const dpi = 150
const clearMm = 0.5
const reach = Math.ceil(mmToPixels(clearMm, dpi))

/** Ink of a sheet, as it is darker than white; three layers of it that must keep apart. */
interface Layers {
  /** Cut lines, labels and whatever else stands on the sheet beside the pieces. */
  readonly trimming: Coverage
  readonly setMarks: Coverage
  /** Words with their marks, and every other text on the pieces. */
  readonly words: Coverage
}

async function layersOf(sheet: Sheet, rasterizer: Rasterizer): Promise<Layers> {
  const ink = async (change: Partial<Sheet>): Promise<Coverage> =>
    darknessOf(await rasterizer.draw({ ...sheet, pieces: [], cuts: [], furniture: [], ...change }))
  const withText = sheet.pieces.map(placed => withArt(placed, ({ art }) => art.text.length > 0))
  const [trimming, texts] = [
    await ink({ cuts: sheet.cuts, furniture: sheet.furniture }),
    await ink({ pieces: withText }),
  ]
  const setMarks = { ...texts, values: new Uint8Array(texts.values.length) }
  const words = { ...texts, values: Uint8Array.from(texts.values) }
  for (const placed of sheet.pieces) moveInk(words, setMarks, setMarkBox(placed))
  return { trimming, setMarks, words }
}

function withArt(placed: PlacedPiece, keep: (art: PlacedArt) => boolean): PlacedPiece {
  return { ...placed, piece: { ...placed.piece, art: placed.piece.art.filter(keep) } }
}

interface Edges {
  readonly left: number
  readonly top: number
  readonly right: number
  readonly bottom: number
}

/** Where the set mark of a front stands on the sheet, from the run of text that is one; undefined on backs, which have none. */
function setMarkBox(placed: PlacedPiece): Edges | undefined {
  const { piece } = placed
  const marks = piece.art.flatMap(({ art, xMm, yMm }) =>
    art.text.filter(run => run.text === piece.setMark).map(run => ({ run, xMm, yMm })),
  )
  const [mark] = marks
  if (mark === undefined) return undefined
  const { run, xMm, yMm } = mark
  const box = pieceBox(placed)
  const left = box.xMm + xMm + run.xMm
  const baseline = box.yMm + yMm + run.baselineMm
  // Nothing of a letter reaches farther than its em above the baseline and a third of it below.
  return {
    left: left - 0.3,
    right: left + run.widthMm + 0.3,
    top: baseline - run.sizeMm,
    bottom: baseline + run.sizeMm * 0.4,
  }
}

function moveInk(from: Coverage, to: Coverage, box: Edges | undefined): void {
  if (box === undefined) return
  const px = (mm: number): number => Math.round(mmToPixels(mm, dpi))
  for (let y = px(box.top); y < px(box.bottom); y++)
    for (let x = px(box.left); x < px(box.right); x++) {
      const at = y * from.width + x
      to.values[at] = from.values[at]!
      from.values[at] = 0
    }
}

/** Whether more pixels than that are half black or more. */
function isInked(ink: Coverage, moreThan: number): boolean {
  let count = 0
  return someInked(ink, () => ++count > moreThan)
}

export function keepClearOfWords(): void {
  describe.each(demoWeeks)('every sheet of pieces of the %s week, in pixels', week => {
    it(`keeps trimming marks, set marks and words ${clearMm} mm apart`, async () => {
      const rasterizer = createRasterizer(dpi)
      for (const { printed, prepared } of await drawDemoWeek(week)) {
        // A patterned back is ink all over, up to the cuts and beyond, and meant so.
        if (prepared.job.item.back === 'pattern') continue
        for (const sheet of printed.sheets.filter(each => each.pieces.length > 0)) {
          const { trimming, setMarks, words } = await layersOf(sheet, rasterizer)
          expect(isInked(words, 100), `${sheet.title} shows its words`).toBe(true)
          if (sheet.side === 'front') {
            expect(isInked(trimming, 100), `${sheet.title} has cut lines`).toBe(true)
            expect(isInked(setMarks, 20), `${sheet.title} has set marks`).toBe(true)
          }
          expect(comeWithin(setMarks, words, reach), `${sheet.title}: set marks and words`).toBe(false)
          expect(comeWithin(trimming, words, reach), `${sheet.title}: trimming marks and words`).toBe(false)
          expect(comeWithin(trimming, setMarks, reach), `${sheet.title}: trimming and set marks`).toBe(false)
        }
      }
    })
  })
}
