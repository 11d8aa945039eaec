/** How a crossword's board divides its room between the grid and its clues. */
import type { Size } from '../../src/geometry.js'
import type { TextStyle } from '../../src/pieces/text/break-lines.js'
import type { CardSet } from '../../src/sets/card-set.js'
import { boardRoom } from '../board-room.js'
import { clueLists } from './clue-lists.js'
import { cellSide, cellsHeight, leastCell } from './crossword-art.js'
import { type CrosswordRequest, givenLetters } from './crossword-options.js'

/** Larger cells help no pencil: our own judgement, no source. */
const MOST_CELL_MM = 18
/** Between the grid and its clues, and between their two columns. */
export const GUTTER_MM = 6

/** Clues grow by as much where that takes nothing from the cells. */
const CLUE_RATIOS = [1.45, 1.3, 1.15] as const

export interface BoardPlan {
  /** Room for the grids of all boards, so that they are of one shape. */
  readonly gridMm: number
  /** Undefined where the clues have a page of their own. */
  readonly clues?: { readonly style: TextStyle; readonly heightMm: number }
}

/** The clues stand below the grids as large as leaves the cells their size, unless the cells would come out too small. */
export function boardPlan(request: CrosswordRequest, set: CardSet): BoardPlan {
  const { type } = request
  const room = boardRoom(request)
  const leastMm = leastCell(type, givenLetters(request))
  const below = (ratio: number) => {
    const style = { sizeMm: type.textMm * ratio, align: 'left' } as const
    const heights = set.cards.map(
      ({ crossword }) =>
        clueLists(request, crossword!, { style, columnMm: columnOf(room) }).heightMm + GUTTER_MM,
    )
    const heightMm = Math.max(...heights)
    const left = { ...room, heightMm: Math.max(0, room.heightMm - heightMm) }
    const sides = set.cards.map(({ crossword }) => cellSide(crossword!, left, mostCell(request)))
    return { clues: { style, heightMm }, left, leastSideMm: Math.min(...sides) }
  }
  const usual = below(1)
  if (usual.leastSideMm < leastMm) return { gridMm: room.heightMm }
  const larger = type.large
    ? undefined
    : CLUE_RATIOS.map(below).find(({ leastSideMm }) => leastSideMm >= usual.leastSideMm)
  const { clues, left } = larger ?? usual
  const heights = set.cards.map(({ crossword }) =>
    cellsHeight(crossword!, cellSide(crossword!, left, mostCell(request))),
  )
  return { gridMm: Math.max(...heights), clues }
}

/** The largest that a cell is drawn. */
export function mostCell(request: CrosswordRequest): number {
  return Math.max(MOST_CELL_MM, leastCell(request.type, givenLetters(request)))
}

/** The width of one of two columns of clues. */
export function columnOf({ widthMm }: Size): number {
  return (widthMm - GUTTER_MM) / 2
}
