import type { ColumnsAndRows, Size } from '../../geometry.js'
import type { CardSet } from '../../sets/card-set.js'
import { countSheets } from '../../sheets/estimate.js'
import { divideSheet, type Grid, type GridRequest, type Orientation } from '../../sheets/grid.js'
import type { PreparedItem } from '../deal/prepare-item.js'

/** A division of the sheet that the words of an item may be tried on. */
export interface GridToTry {
  readonly grid: Grid
  /** Sheets of card that the set takes. */
  readonly sheets: number
}

/** More and smaller pieces on a sheet are no help to anybody: our own judgement, no source. */
const MOST = { columns: 8, rows: 14 } as const
/** A card with a shorter edge is hard for a child to pick up and to hold: our own judgement, no source. */
const LEAST_EDGE_MM = 20

const orientations: readonly Orientation[] = ['portrait', 'landscape']

/**
 * Every division of the sheet worth trying, the fewest sheets first; of those that take as many sheets, the present one
 * and then those whose pieces are nearest in shape to what the layout likes. Of the divisions that differ only in how
 * low their pieces are and take as many sheets, the one with the highest pieces stands for all. `held` is what the plan
 * leaves no choice about.
 */
export function gridsToTry(prepared: PreparedItem, set: CardSet, held: HeldByPlan): readonly GridToTry[] {
  const found = new Map<string, GridToTry>()
  const sheetsOn = sheetCounter(prepared, set)
  for (const orientation of held.orientation === undefined ? orientations : [held.orientation])
    for (const columns of upTo(MOST.columns, held.across))
      for (const rows of upTo(MOST.rows, held.down)) {
        const grid = gridOf(prepared, { columns, rows }, orientation)
        if (grid === undefined || !isWorthTrying(prepared, grid)) continue
        const sheets = sheetsOn(grid)
        const name = `${orientation} ${columns} ${sheets}`
        if (!found.has(name)) found.set(name, { grid, sheets })
      }
  const liked = shapeOf(likedPiece(prepared))
  const unlike = ({ pieceSize }: Grid) => Math.abs(Math.log(shapeOf(pieceSize) / liked))
  const isPresent = ({ columns, rows, orientation }: Grid) =>
    columns === prepared.grid.columns &&
    rows === prepared.grid.rows &&
    orientation === prepared.grid.orientation
  return [...found.values()].sort(
    (a, b) =>
      a.sheets - b.sheets ||
      Number(isPresent(b.grid)) - Number(isPresent(a.grid)) ||
      unlike(a.grid) - unlike(b.grid),
  )
}

/** What a plan says of the division of a sheet; nothing of it is changed without asking. */
export interface HeldByPlan {
  readonly orientation?: Orientation | undefined
  readonly across?: number | undefined
  readonly down?: number | undefined
}

/** Sheets of card that the item's set takes on a grid. */
export function sheetsFor(prepared: PreparedItem, grid: Grid, set: CardSet): number {
  return sheetCounter(prepared, set)(grid)
}

function sheetCounter({ job }: PreparedItem, { cards }: CardSet): (grid: Grid) => number {
  const { copies, order } = job.item
  const once = cards.filter(card => card.copy === 1).length
  return grid => countSheets({ grid, cards: once, copies, order })
}

function upTo(most: number, held: number | undefined): readonly number[] {
  return held === undefined ? Array.from({ length: most }, (_, index) => index + 1) : [held]
}

function gridOf(
  { gridRequest }: PreparedItem,
  { columns, rows }: ColumnsAndRows,
  orientation: Orientation,
): Grid | undefined {
  const division = { kind: 'count', across: columns, down: rows } as const
  const divided = divideSheet({ ...gridRequest, orientation, division } satisfies GridRequest)
  return divided.ok ? divided.value : undefined
}

/** A strip or a board is as wide as its page; a strip is no lower than the layout has it. */
function isWorthTrying(prepared: PreparedItem, { columns, rows, pieceSize }: Grid): boolean {
  const { grid, layout } = prepared
  const leastMm = Math.min(LEAST_EDGE_MM, grid.pieceSize.widthMm, grid.pieceSize.heightMm)
  if (Math.min(pieceSize.widthMm, pieceSize.heightMm) < leastMm - 1e-6) return false
  const acrossThePage = layout.kind === 'pieces' && layout.perSheet.columns === 1
  if (!acrossThePage) return true
  return columns === 1 && (rows === 1 || pieceSize.heightMm >= likedPiece(prepared).heightMm - 1e-6)
}

/** A piece as the layout has it in ordinary print on this paper. */
function likedPiece({ layout, grid, gridRequest }: PreparedItem): Size {
  const liked =
    layout.kind === 'pieces'
      ? divideSheet({
          ...gridRequest,
          orientation: undefined,
          division: { kind: 'layout' },
          preferred: layout.perSheet,
        })
      : undefined
  return liked?.ok ? liked.value.pieceSize : grid.pieceSize
}

function shapeOf({ widthMm, heightMm }: Size): number {
  return widthMm / heightMm
}
