/** A little drawing of a sheet with its cuts numbered in the order of cutting. */
import type { Box } from '../../geometry.js'
import { pathText, rectangle } from '../../pieces/art/path-text.js'
import type { PlacedArt, Shape } from '../../pieces/piece.js'
import type { CuttingPlan, PlannedCut } from '../cutting-plan.js'
import type { Grid } from '../grid.js'
import { type Lettering, unsaid } from './lettering.js'
import { drawFrame, drawStrokes, type Segment } from './strokes.js'

export interface CuttingDiagramRequest {
  readonly grid: Grid
  readonly plan: CuttingPlan
  readonly lettering: Lettering
  /** Longest edge of the little sheet. */
  readonly longestMm: number
}

export interface CuttingDiagram {
  readonly art: readonly PlacedArt[]
  readonly widthMm: number
  readonly heightMm: number
}

const NUMBER_MM = 2.5
/** Beside the sheet, for the numbers. */
const EDGE_MM = 4.5

/** The sheet's outline, its cards in pale grey, upright cuts numbered above it and level ones to its left. */
export function drawCuttingDiagram({
  grid,
  plan,
  lettering,
  longestMm,
}: CuttingDiagramRequest): CuttingDiagram {
  const { sheetSize } = grid
  const ratio = longestMm / Math.max(sheetSize.widthMm, sheetSize.heightMm)
  const size = { widthMm: sheetSize.widthMm * ratio, heightMm: sheetSize.heightMm * ratio }
  const cuts = plan.steps.flatMap(step => step.cuts)
  const segments = cuts.map(
    ({ direction, atMm }): Segment =>
      direction === 'upright'
        ? [atMm * ratio, 0, atMm * ratio, size.heightMm]
        : [0, atMm * ratio, size.widthMm, atMm * ratio],
  )
  // They lie over one another, so they are one art: as three, no row of them could be taken from one page to another.
  const shapes = [
    cardsBackground(plan.block, ratio),
    ...drawFrame(size, 0.5).shapes,
    ...drawStrokes({ size, segments, widthMm: 0.25 }).shapes,
  ]
  const sheet = { art: { ...size, shapes, text: [] }, xMm: EDGE_MM, yMm: EDGE_MM }
  return {
    art: [sheet, ...numbersBeside(cuts, ratio, lettering)],
    widthMm: size.widthMm + EDGE_MM,
    heightMm: size.heightMm + EDGE_MM,
  }
}

function cardsBackground(block: Box, ratio: number): Shape {
  const [left, top] = [block.xMm * ratio, block.yMm * ratio]
  const d = pathText(rectangle(left, top, left + block.widthMm * ratio, top + block.heightMm * ratio))
  return { kind: 'path', d, fill: '#e4e4e4' }
}

/** Numbers that would run into one another are left out: their neighbours tell the order. */
function numbersBeside(
  cuts: readonly PlannedCut[],
  ratio: number,
  lettering: Lettering,
): readonly PlacedArt[] {
  return (['upright', 'level'] as const).flatMap(direction => {
    const sorted = cuts.filter(cut => cut.direction === direction).sort((a, b) => a.atMm - b.atMm)
    let free = Number.NEGATIVE_INFINITY
    return sorted.flatMap(({ number, atMm }) => {
      const art = unsaid(lettering({ text: String(number), sizeMm: NUMBER_MM }))
      const alongMm = EDGE_MM + atMm * ratio
      const extent = direction === 'upright' ? art.widthMm : NUMBER_MM
      if (alongMm - extent / 2 < free) return []
      free = alongMm + extent / 2 + 0.3
      return direction === 'upright'
        ? [{ art, xMm: alongMm - art.widthMm / 2, yMm: EDGE_MM - art.heightMm - 0.3 }]
        : [{ art, xMm: EDGE_MM - art.widthMm - 0.8, yMm: alongMm - art.heightMm / 2 }]
    })
  })
}
