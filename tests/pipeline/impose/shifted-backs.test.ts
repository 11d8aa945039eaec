import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { createRasterizer } from '../../../src/files/raster/raster.js'
import { type Box, mmToPixels } from '../../../src/geometry.js'
import { putPlanOnSheets } from '../../../src/pipeline.js'
import { formatProblem } from '../../../src/problems.js'
import { DEFAULT_BLEED_MM } from '../../../src/sheets/bleed.js'
import { behind, turnedSides } from '../../../src/sheets/flip.js'
import { pieceBox, type Sheet } from '../../../src/sheets/sheet.js'
import { pixelBytes } from '../../files/page-pixels.js'
import { folderWith, marshPlan } from '../plan-folder.js'
import { sharedWork } from '../shared-work.js'

const dpi = 150

async function frontAndBack(item: string, shift?: string): Promise<readonly [Sheet, Sheet]> {
  const printer = shift === undefined ? '' : `printer: {back shift: ${shift}}\n`
  const folder = folderWith({ 'marsh.yaml': `${marshPlan}  - ${item}\n${printer}` })
  const drawn = await putPlanOnSheets({ planFile: join(folder, 'marsh.yaml'), kept: sharedWork })
  if (!drawn.ok) throw new Error(drawn.problems.map(formatProblem).join('\n'))
  const [front, back] = drawn.value.items[0]!.printed.sheets
  return [front!, back!]
}

interface Ink {
  readonly width: number
  readonly height: number
  readonly at: (x: number, y: number) => boolean
}

async function inkOf(sheet: Sheet): Promise<Ink> {
  const drawn = await createRasterizer(dpi).draw(sheet)
  const bytes = pixelBytes(drawn)
  const { widthPx: width, heightPx: height, channels } = drawn
  return { width, height, at: (x, y) => bytes[(y * width + x) * channels]! < 200 }
}

const px = (mm: number): number => Math.round(mmToPixels(mm, dpi))

/**
 * The widest white square that fits into the box, in mm: the pattern's own meshes where it covers the box, and more
 * where an edge of it is bare.
 */
function widestWhite(ink: Ink, box: Box): number {
  const [left, top, right, bottom] = [box.xMm, box.yMm, box.xMm + box.widthMm, box.yMm + box.heightMm].map(px)
  const width = right! - left!
  let above = new Uint16Array(width + 1)
  let widest = 0
  for (let y = top!; y < bottom!; y++) {
    const row = new Uint16Array(width + 1)
    for (let x = 0; x < width; x++) {
      if (ink.at(left! + x, y)) continue
      // The largest white square with its lower right corner here.
      row[x + 1] = 1 + Math.min(row[x]!, above[x]!, above[x + 1]!)
      widest = Math.max(widest, row[x + 1]!)
    }
    above = row
  }
  return (widest / dpi) * 25.4
}

/** Where the cards' edges fall on the back when the printer misses by so much: what the blade then cuts out. */
function cutOut(front: Sheet, flip: 'long edge' | 'short edge', missedBy: readonly [number, number]) {
  const sides = turnedSides(flip, front)
  return front.pieces.map(placed => {
    const box = behind(pieceBox(placed), front, sides)
    return { ...box, xMm: box.xMm + missedBy[0], yMm: box.yMm + missedBy[1] }
  })
}

describe.each(['long edge', 'short edge'] as const)('a patterned back, turned on the %s, in pixels', flip => {
  const item = (gap: number) => `{layout: word-cards, back: pattern, flip: ${flip}, margin: 12, gap: ${gap}}`

  it.each([0, 4])(
    'shows no white edge on any card however the printer misses within the bleed (gap %d)',
    async gap => {
      const [front, back] = await frontAndBack(item(gap))
      const ink = await inkOf(back)
      const inside = cutOut(front, flip, [0, 0]).map(box => widestWhite(ink, box))
      const mesh = Math.max(...inside)
      const far = DEFAULT_BLEED_MM - 0.2
      for (const missed of [
        [far, far],
        [-far, far],
        [far, -far],
        [-far, -far],
      ] as const)
        for (const box of cutOut(front, flip, missed))
          expect(widestWhite(ink, box)).toBeLessThanOrEqual(mesh + 0.4)
      // Without the bleed the same miss would show, so the measure can tell.
      const bare = await inkOf({ ...back, furniture: [] })
      const uncovered = cutOut(front, flip, [far, far]).map(box => widestWhite(bare, box))
      expect(Math.max(...uncovered)).toBeGreaterThan(mesh + 0.4)
    },
  )

  it('is printed where the teacher’s shift puts it, bleed and all', async () => {
    const [, plain] = await frontAndBack(item(0))
    const [, moved] = await frontAndBack(item(0), '1.27 mm right, 2.54 mm up')
    // At 150 DPI 1.27 mm are 7.5 pixels and 2.54 mm are 15.
    const withoutLabel = (sheet: Sheet): Sheet => ({
      ...sheet,
      furniture: sheet.furniture.filter(({ art }) => art.text.length === 0),
    })
    const [before, after] = [await inkOf(withoutLabel(plain)), await inkOf(withoutLabel(moved))]
    const edges = (ink: Ink) => {
      let [left, bottom] = [ink.width, 0]
      for (let y = 0; y < ink.height; y++)
        for (let x = 0; x < ink.width; x++)
          if (ink.at(x, y)) {
            left = Math.min(left, x)
            bottom = y
          }
      return { left, bottom }
    }
    const [a, b] = [edges(before), edges(after)]
    expect(Math.abs(b.left - a.left - 7.5)).toBeLessThanOrEqual(1)
    expect(Math.abs(a.bottom - b.bottom - 15)).toBeLessThanOrEqual(1)
  })
})
