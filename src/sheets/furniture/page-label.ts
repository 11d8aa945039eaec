/** The small line in the margin that tells loose sheets apart. */
import { type Box, boxesOverlap, insetBox, pointsToMm, type Size } from '../../geometry.js'
import type { PlacedArt } from '../../pieces/piece.js'
import { UNREACHABLE_EDGE_MM } from '../margins.js'
import type { CutMark } from '../sheet.js'
import type { Lettering } from './lettering.js'

export interface PageLabelRequest {
  readonly text: string
  readonly lettering: Lettering
  readonly sheetSize: Size
  readonly pieces: readonly Box[]
  readonly cuts: readonly CutMark[]
}

/** Largest first. Below 6 pt it would be of no use, and is left out. */
const SIZES_MM = [7.5, 7, 6.5, 6].map(pointsToMm)

/** White space between the label and whatever stands next to it. */
const CLEAR_MM = 0.5

/** The label where it is clear of every piece and cut mark and in the printer's reach: at the top, or else at the bottom. */
export function placePageLabel(request: PageLabelRequest): PlacedArt | undefined {
  const { text, lettering, sheetSize, pieces, cuts } = request
  const obstacles = [...pieces, ...cuts.map(cutBox)].map(box => insetBox(box, -CLEAR_MM))
  const reach = insetBox({ xMm: 0, yMm: 0, ...sheetSize }, UNREACHABLE_EDGE_MM)
  const lefts = [...new Set(pieces.map(piece => piece.xMm))].sort((a, b) => a - b)
  for (const sizeMm of SIZES_MM) {
    const art = lettering({ text, sizeMm })
    const tops = [reach.yMm, reach.yMm + reach.heightMm - art.heightMm]
    for (const yMm of tops) {
      for (const left of lefts.length > 0 ? lefts : [reach.xMm]) {
        for (const xMm of [left + 2 * CLEAR_MM, left].map(x => Math.max(reach.xMm, x))) {
          const box = { xMm, yMm, widthMm: art.widthMm, heightMm: art.heightMm }
          const inReach = xMm + art.widthMm <= reach.xMm + reach.widthMm
          if (inReach && !obstacles.some(obstacle => boxesOverlap(box, obstacle))) return { art, xMm, yMm }
        }
      }
    }
  }
  return undefined
}

function cutBox(cut: CutMark): Box {
  const half = cut.widthMm / 2
  return {
    xMm: Math.min(cut.x1Mm, cut.x2Mm) - half,
    yMm: Math.min(cut.y1Mm, cut.y2Mm) - half,
    widthMm: Math.abs(cut.x2Mm - cut.x1Mm) + cut.widthMm,
    heightMm: Math.abs(cut.y2Mm - cut.y1Mm) + cut.widthMm,
  }
}
