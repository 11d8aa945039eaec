/** In which order to cut a pile of sheets, and what to do with the strips, so that few cuts do it. */
import { type Box, sayMm } from '../geometry.js'
import type { CardOrder, CutStyle } from '../plan/plan.js'
import { straightCuts } from './cuts.js'
import { blockBox, type Grid, placeBox, placesOf, usedPart } from './grid.js'

/** A straight cut across the whole sheet or strip, in mm on the sheet. */
export interface PlannedCut {
  /** 1, 2, … in the order of cutting. */
  readonly number: number
  readonly direction: 'upright' | 'level'
  /** x of an upright cut, y of a level one. */
  readonly atMm: number
}

export interface CuttingStep {
  /** One or two plain sentences. */
  readonly text: string
  readonly cuts: readonly PlannedCut[]
}

export interface CuttingPlan {
  readonly steps: readonly CuttingStep[]
  /** Strokes of the blade for one pile, its strips laid one on another before the level cuts. */
  readonly cuts: number
  /** The same where the strips are cut one by one. */
  readonly cutsStripByStrip: number
  /** All the pieces of the fullest sheet and the gaps between them. */
  readonly block: Box
}

export interface CuttingPlanRequest {
  readonly grid: Grid
  readonly order: CardOrder
  readonly cut: CutStyle
  /** Whether a corner of each piece is cut off. */
  readonly cutCorners?: boolean | undefined
  /** Places taken on the fullest sheet, where that is not all of them: rows that stay empty need no cut. */
  readonly used?: number | undefined
  /** How many pieces there are in all: one alone needs no sorting. */
  readonly pieces?: number | undefined
}

/**
 * Outside edges first, then straight through from top to bottom, then the strips piled (left one on top) and cut
 * straight across. Places are numbered by rows: with the strips piled this way the little piles hold their places
 * in order, which is what keeps cut-and-stack sorted.
 *
 * Ticks fall off with the outside edges that carry them, so a sheet with ticks loses its sides first and keeps top
 * and bottom until the upright cuts are done; the level cuts go by measure.
 */
export function planCuts({
  grid: wholeGrid,
  order,
  cut,
  cutCorners = false,
  used,
  pieces,
}: CuttingPlanRequest): CuttingPlan {
  const grid = usedPart(wholeGrid, used ?? placesOf(wholeGrid))
  const block = blockBox(grid)
  const boxes = Array.from({ length: placesOf(grid) }, (_, place) => placeBox(grid, place))
  const { columns, rows } = straightCuts(boxes, grid.sheetSize)
  const isSide = (x: number) => near(x, block.xMm) || near(x, block.xMm + block.widthMm)
  const isEnd = (y: number) => near(y, block.yMm) || near(y, block.yMm + block.heightMm)
  const sides = columns.filter(isSide)
  const ends = rows.filter(isEnd)
  const innerColumns = columns.filter(x => !isSide(x))
  const innerRows = rows.filter(y => !isEnd(y))
  const number = counter()
  const upright = (positions: readonly number[]) => positions.map(atMm => number('upright', atMm))
  const level = (positions: readonly number[]) => positions.map(atMm => number('level', atMm))

  const steps: CuttingStep[] = []
  if (cut === 'lines') {
    steps.push({
      text: outsideText(sides.length + ends.length, 'edges'),
      cuts: [...upright(sides), ...level(ends)],
    })
    steps.push({ text: throughText(grid, innerColumns.length), cuts: upright(innerColumns) })
    steps.push({ text: acrossText(grid, innerRows.length), cuts: level(innerRows) })
  } else {
    steps.push({ text: outsideText(sides.length, 'sides'), cuts: upright(sides) })
    steps.push({ text: throughText(grid, innerColumns.length), cuts: upright(innerColumns) })
    steps.push({ text: acrossByMeasureText(grid, rows.length), cuts: level(rows) })
  }
  const cutting = steps.filter(step => step.cuts.length > 0)
  const across = cut === 'lines' ? innerRows.length : rows.length
  const total = columns.length + rows.length
  return {
    steps: [
      ...cutting,
      ...(pieces === 1 ? [] : [{ text: gatherText(order, grid), cuts: [] }]),
      ...(cutCorners && cut !== 'none' ? [cornerStep] : []),
    ],
    cuts: total,
    cutsStripByStrip: total + (grid.columns - 1) * across,
    block,
  }
}

const cornerStep: CuttingStep = {
  text: 'With scissors, cut off the top right corner of every piece along its slanting line: a finger finds which way is up.',
  cuts: [],
}

function counter(): (direction: PlannedCut['direction'], atMm: number) => PlannedCut {
  let last = 0
  return (direction, atMm) => {
    last += 1
    return { number: last, direction, atMm }
  }
}

function outsideText(count: number, what: 'edges' | 'sides'): string {
  return `Trim the outside ${what} of the pile: ${cutsInWords(count)}.`
}

function throughText(grid: Grid, count: number): string {
  const gaps = grid.gapMm > 0 ? ', one on each side of every gap' : ''
  return `Cut straight through from top to bottom: ${cutsInWords(count)}${gaps}. This makes ${grid.columns} strips, ${sayMm(grid.pieceSize.widthMm)} mm wide.`
}

function acrossText(grid: Grid, count: number): string {
  const gaps = grid.gapMm > 0 ? ', one on each side of every gap' : ''
  return `${pileStripsText(grid)}ut straight across: ${cutsInWords(count)}${gaps}. Each is ${sayMm(grid.pieceSize.heightMm)} mm high.`
}

function acrossByMeasureText(grid: Grid, count: number): string {
  const gaps = grid.gapMm > 0 ? `, the gaps ${sayMm(grid.gapMm)} mm` : ''
  const first = grid.originYMm > 1e-4 ? `${sayMm(grid.originYMm)} mm below the top, ` : ''
  return `${pileStripsText(grid)}ut straight across by your trimmer’s ruler: ${cutsInWords(count)}, beginning ${first || 'at the top, '}each ${sayMm(grid.pieceSize.heightMm)} mm high${gaps}.`
}

function pileStripsText(grid: Grid): string {
  return grid.columns > 1 ? 'Lay the strips one on another, the left one on top, and c' : 'C'
}

function gatherText(order: CardOrder, grid: Grid): string {
  switch (order) {
    case 'stack':
      return grid.rows > 1
        ? 'Lay the little piles one on another, the top one uppermost: all are in order, and any blanks come last.'
        : 'All are in order, and any blanks come last.'
    case 'child':
      return 'Cut the sheets of one child at a time, so that each set stays together.'
    case 'rows':
      return 'Sort them by the numbers at the foot.'
  }
}

function cutsInWords(count: number): string {
  return count === 1 ? '1 cut' : `${count} cuts`
}

function near(a: number, b: number): boolean {
  return Math.abs(a - b) < 1e-4
}
