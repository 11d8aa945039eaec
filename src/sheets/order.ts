/**
 * Which card goes to which place of which sheet. The three orders share a signature: they take the cards in set
 * order, all of one copy before the next, and give for each sheet its places (by rows from the top left), each
 * the index of a card, or `null` where the place stays empty.
 */
import type { CardOrder } from '../plan/plan.js'

export interface OrderRequest {
  /** For each card which copy it belongs to: 1, 2, … */
  readonly copies: readonly number[]
  /** Places on a sheet. */
  readonly places: number
}

export type SheetPlaces = readonly (number | null)[]

export type OrderStrategy = (request: OrderRequest) => readonly SheetPlaces[]

/** Sheet after sheet, as one reads. */
export const inRows: OrderStrategy = ({ copies, places }) =>
  fillSheets(copies.length, places, (sheet, place) => sheet * places + place)

/**
 * Cut and stack: on S sheets, place p of sheet s holds card p · S + s. The printed pile is cut through once and
 * the little piles are laid one on another in the order of the places: the cards come out sorted. Where the last
 * places stay empty, the blanks all come out together at the end of the pile.
 */
export const inStack: OrderStrategy = ({ copies, places }) => stackOf(copies.length, places)

/**
 * A whole set a child: no sheet is shared by two children unless it holds each of their sets whole. A set of more
 * cards than places takes sheets of its own and is cut and stacked by itself.
 */
export const inChildren: OrderStrategy = ({ copies, places }) => {
  const sets = [...new Set(copies)]
    .sort((a, b) => a - b)
    .map(copy => copies.flatMap((itsCopy, index) => (itsCopy === copy ? [index] : [])))
  const sheets: (number | null)[][] = []
  let open: (number | null)[] | undefined
  for (const set of sets) {
    if (set.length > places) {
      open = undefined
      for (const sheet of stackOf(set.length, places)) {
        sheets.push(sheet.map(position => (position === null ? null : set[position]!)))
      }
      continue
    }
    if (open === undefined || open.length + set.length > places) {
      open = []
      sheets.push(open)
    }
    open.push(...set)
  }
  return sheets.map(sheet => [...sheet, ...Array<null>(places - sheet.length).fill(null)])
}

export const orders: Readonly<Record<CardOrder, OrderStrategy>> = {
  rows: inRows,
  stack: inStack,
  child: inChildren,
}

function stackOf(count: number, places: number): readonly SheetPlaces[] {
  const sheets = Math.ceil(count / places)
  return fillSheets(count, places, (sheet, place) => place * sheets + sheet)
}

function fillSheets(
  count: number,
  places: number,
  cardAt: (sheet: number, place: number) => number,
): readonly SheetPlaces[] {
  return Array.from({ length: Math.ceil(count / places) }, (_, sheet) =>
    Array.from({ length: places }, (_, place) => {
      const card = cardAt(sheet, place)
      return card < count ? card : null
    }),
  )
}
