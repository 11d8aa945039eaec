/** What a set would take before anything is printed: sheets of card, sides, pieces, cuts. */
import type { CardOrder } from '../plan/plan.js'
import { straightCuts } from './cuts.js'
import { type Grid, placeBox, placesOf, usedPart } from './grid.js'
import { orders, type SheetPlaces } from './order.js'

export interface EstimateRequest {
  readonly grid: Grid
  /** Cards or boards of one set. */
  readonly cards: number
  readonly copies: number
  readonly order: CardOrder
  /** Whether their backs are printed. */
  readonly backs: boolean
}

export interface Estimate {
  readonly sheetsOfCard: number
  /** Printed sides: twice the sheets where there are backs. */
  readonly sides: number
  readonly pieces: number
  readonly emptyPlaces: number
  /** Share of the card, 0 to 1, that ends in the bin. */
  readonly wasteShare: number
  /** Strokes of the blade for one pile of sheets. */
  readonly cutsPerPile: number
  readonly piles: number
  /** Strokes of the blade in all. */
  readonly cuts: number
}

/** Sheets of card that a classroom trimmer cuts cleanly at once: common practice, no source. */
export const SHEETS_PER_PILE = 5

export function estimateSheets(request: EstimateRequest): Estimate {
  const { grid, cards, copies, backs } = request
  const places = placesOf(grid)
  const pieces = cards * copies
  const sheetsOfCard = countSheets(request)
  const cut = usedPart(grid, fullestSheet(request))
  const boxes = Array.from({ length: placesOf(cut) }, (_, place) => placeBox(cut, place))
  const lines = straightCuts(boxes, grid.sheetSize)
  const cutsPerPile = lines.columns.length + lines.rows.length
  const piles = Math.ceil(sheetsOfCard / SHEETS_PER_PILE)
  const sheetArea = grid.sheetSize.widthMm * grid.sheetSize.heightMm
  const pieceArea = grid.pieceSize.widthMm * grid.pieceSize.heightMm
  return {
    sheetsOfCard,
    sides: backs ? sheetsOfCard * 2 : sheetsOfCard,
    pieces,
    emptyPlaces: sheetsOfCard * places - pieces,
    wasteShare: sheetsOfCard === 0 ? 0 : 1 - (pieces * pieceArea) / (sheetsOfCard * sheetArea),
    cutsPerPile,
    piles,
    cuts: piles * cutsPerPile,
  }
}

/** Asked of the orders themselves, so that an estimate cannot differ from what is printed. */
export function countSheets(request: Omit<EstimateRequest, 'backs'>): number {
  return sheetsOf(request).length
}

/** Pieces on the sheet that holds most. */
export function fullestSheet(request: Omit<EstimateRequest, 'backs'>): number {
  return Math.max(0, ...sheetsOf(request).map(sheet => sheet.filter(card => card !== null).length))
}

function sheetsOf({ grid, cards, copies, order }: Omit<EstimateRequest, 'backs'>): readonly SheetPlaces[] {
  const copyOf = Array.from({ length: cards * copies }, (_, index) => Math.floor(index / cards) + 1)
  return orders[order]({ copies: copyOf, places: placesOf(grid) })
}
