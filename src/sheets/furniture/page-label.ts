/** The small line in the margin that tells loose sheets apart. */
import { type Box, boxContains, boxesOverlap, insetBox, pointsToMm, type Size } from '../../geometry.js'
import type { PlacedArt } from '../../pieces/piece.js'
import { UNREACHABLE_EDGE_MM } from '../margins.js'
import type { CutLine } from '../sheet.js'
import type { Lettering } from './lettering.js'

export interface PageLabelRequest {
  readonly text: string
  readonly lettering: Lettering
  readonly sheetSize: Size
  readonly pieces: readonly Box[]
  readonly cuts: readonly CutLine[]
}

/** Largest first. Below 6 pt it would be of no use, and is left out. */
const SIZES_MM = [pointsToMm(7.5), pointsToMm(7), pointsToMm(6.5), pointsToMm(6)] as const

/** White space between the label and whatever stands next to it. */
const CLEAR_MM = 0.5

/** The label where it is clear of every piece and cut line and in the printer's reach: at the top, or else at the bottom. */
export function placePageLabel(request: PageLabelRequest): PlacedArt | undefined {
  const { text, lettering, sheetSize, pieces, cuts } = request
  const obstacles = [...pieces, ...cuts.map(cutBox)].map(box => insetBox(box, -CLEAR_MM))
  const reach = insetBox({ xMm: 0, yMm: 0, ...sheetSize }, UNREACHABLE_EDGE_MM)
  const lefts = leftsToTry(pieces, reach)
  const [largestMm] = SIZES_MM
  const largest = lettering({ text, sizeMm: largestMm })
  for (const sizeMm of SIZES_MM) {
    const widthMm = (largest.widthMm * sizeMm) / largestMm
    const heightMm = (largest.heightMm * sizeMm) / largestMm
    const tops = [reach.yMm, reach.yMm + reach.heightMm - heightMm]
    const free = tops
      .flatMap(yMm => lefts.map(xMm => ({ xMm, yMm, widthMm, heightMm })))
      .find(box => boxContains(reach, box) && !obstacles.some(obstacle => boxesOverlap(box, obstacle)))
    if (free === undefined) continue
    const art = sizeMm === largestMm ? largest : lettering({ text, sizeMm })
    return { art, xMm: free.xMm, yMm: free.yMm }
  }
  return undefined
}

/** Just inside each column, where the cut lines of its edges are passed, and at its very edge. */
function leftsToTry(pieces: readonly Box[], reach: Box): readonly number[] {
  const columns = [...new Set(pieces.map(piece => piece.xMm))].sort((a, b) => a - b)
  if (columns.length === 0) return [reach.xMm]
  return columns.flatMap(left => [left + 2 * CLEAR_MM, left]).map(x => Math.max(reach.xMm, x))
}

function cutBox(cut: CutLine): Box {
  const half = cut.widthMm / 2
  return {
    xMm: Math.min(cut.x1Mm, cut.x2Mm) - half,
    yMm: Math.min(cut.y1Mm, cut.y2Mm) - half,
    widthMm: Math.abs(cut.x2Mm - cut.x1Mm) + cut.widthMm,
    heightMm: Math.abs(cut.y2Mm - cut.y1Mm) + cut.widthMm,
  }
}
