/** Boards larger than a sheet: over which sheets they are joined, and what each sheet has room for. */
import type { Size } from '../../src/geometry.js'
import { type OptionsOf, oneOfNumbers, option } from '../../src/plan/values/options.js'
import { cardId } from '../../src/sets/card-id.js'
import type { Card } from '../../src/sets/card-set.js'
import type { RoomierOptions } from '../layout.js'

/** Sheets that are joined to one board, beside and below one another. */
export interface JoinedSheets {
  readonly across: number
  readonly down: number
}

export const ONE_SHEET: JoinedSheets = { across: 1, down: 1 }

const SHEETS = [1, 2, 4]

export const sheetsOption = {
  sheets: option(
    'over how many sheets of paper a board is joined: 1, 2 or 4',
    oneOfNumbers(SHEETS, undefined),
    {
      example: '2',
      usual: '1',
    },
  ),
}

/** Of an edge on which the next sheet is glued: our own judgement of what a glue stick covers, no source. */
const OVERLAP_MM = 10

type SheetsAsked = OptionsOf<typeof sheetsOption>

export function sheetsOf({ sheets }: SheetsAsked): number {
  return sheets ?? 1
}

/**
 * Larger cells on more sheets.
 * @param open whether they may be taken without asking, where the plan does not name the sheets
 */
export function moreSheets(options: SheetsAsked, open: boolean): readonly RoomierOptions<SheetsAsked>[] {
  const now = sheetsOf(options)
  return SHEETS.filter(sheets => sheets > now).map(sheets => ({
    options: { sheets },
    says: `sheets: ${sheets}`,
    open: open && options.sheets === undefined,
    timesSheets: sheets / now,
  }))
}

/** Two sheets side by side, four two by two. */
export function joinedSheets(count: number): JoinedSheets {
  return { across: count === 1 ? 1 : 2, down: count === 4 ? 2 : 1 }
}

/** What is left of a sheet beside the strips on which others are glued; the same on each, so that sheets match. */
export function besideStrips({ widthMm, heightMm }: Size, { across, down }: JoinedSheets): Size {
  return {
    widthMm: widthMm - (across === 1 ? 0 : OVERLAP_MM),
    heightMm: heightMm - (down === 1 ? 0 : OVERLAP_MM),
  }
}

/** The column and the row of a sheet, from 0; `part` counts row by row from 1. */
export function placeOfSheet(part: number, { across }: JoinedSheets): { column: number; row: number } {
  return { column: (part - 1) % across, row: Math.floor((part - 1) / across) }
}

/** A card for each sheet of each board, which keeps all that the board has. */
export function inParts(boards: readonly Card[], sheets: number): readonly Card[] {
  if (sheets === 1) return boards
  const of = Math.max(...boards.map(({ number }) => number))
  return boards.flatMap(board =>
    Array.from({ length: sheets }, (_, index) => ({
      ...board,
      part: { number: index + 1, of: sheets },
      id: cardId({ prefix: 'board', number: board.number, copy: board.copy, of, part: index + 1 }),
    })),
  )
}

/** What a grown-up does before the game, to stand before a list of what else is needed; empty for a single sheet. */
export function joiningTold(sheets: number): string {
  if (sheets === 1) return ''
  const cut =
    sheets === 2
      ? 'cut the second sheet along the line at its left'
      : 'lay the sheets out as 1 2 above 3 4; cut the second and fourth along the line at their left, the third and fourth along the line at their top'
  return `${cut}, lay each on the empty strip of the sheet beside or above it so that the lines meet, and glue it there. A grown-up does the cutting. Then `
}
