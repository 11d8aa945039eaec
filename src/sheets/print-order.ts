/** The order in which sides go through the printer, and what to do with the pile between fronts and backs. */
import type { Flip } from './flip.js'

/** Which sheet the printer takes first from the pile that is put back for its backs. */
export type Pile = 'in order' | 'last sheet first'

/** What is put in order here is told by its number alone. */
interface Numbered {
  readonly number: number
}

export interface SidesRequest<S extends Numbered> {
  readonly fronts: readonly S[]
  /** One a front, in the same order; none where nothing is printed on the back. */
  readonly backs: readonly S[]
  readonly flip: Flip
  /** Where the card is fed by hand a second time; left out: the printer turns each sheet itself. */
  readonly pile?: Pile | undefined
}

export interface PrintedSides<S extends Numbered> {
  /** Numbered from 1 in the order of printing. */
  readonly sheets: readonly S[]
  /** How to feed them, in plain sentences; none where nothing is printed on the back. */
  readonly notes: readonly string[]
}

export function orderSides<S extends Numbered>({
  fronts,
  backs,
  flip,
  pile,
}: SidesRequest<S>): PrintedSides<S> {
  if (backs.length === 0) return { sheets: numberSheets(fronts), notes: [] }
  if (pile === undefined) {
    const note = `Print on both sides, turned over on the ${flip}: every second page is the back of the page before it.`
    return { sheets: interleave(fronts, backs), notes: [note] }
  }
  return { sheets: inTwoPasses(fronts, backs, pile), notes: [handFedNote(fronts.length, flip, pile)] }
}

function handFedNote(sheets: number, flip: Flip, pile: Pile): string {
  const pages = (first: number, last: number) =>
    first === last ? `page ${first}` : `pages ${first} to ${last}`
  const turn = `turn ${sheets === 1 ? 'it' : 'the whole pile'} over on the ${flip}`
  const order =
    pile === 'in order'
      ? `, put it back so that the printer takes sheet 1 first`
      : `, put it back so that the printer takes the last sheet first`
  const backs = `${turn}${sheets === 1 ? ', put it back' : order}, then print ${pages(sheets + 1, 2 * sheets)} on the backs.`
  return `Fed twice by hand: print ${pages(1, sheets)}, ${backs} Try it with one sheet of plain paper first.`
}

/** Front, its back, next front, …, numbered from 1: for a printer that prints both sides. */
export function interleave<S extends Numbered>(fronts: readonly S[], backs: readonly S[]): readonly S[] {
  return numberSheets(fronts.flatMap((front, index) => [front, ...backs.slice(index, index + 1)]))
}

/**
 * All fronts, then all backs: for card that is fed by hand a second time. Printers differ in whether the pile comes
 * back in order or with its last sheet first; `pile` says which.
 */
export function inTwoPasses<S extends Numbered>(
  fronts: readonly S[],
  backs: readonly S[],
  pile: Pile,
): readonly S[] {
  return numberSheets([...fronts, ...(pile === 'in order' ? backs : backs.toReversed())])
}

/** The same sheets, numbered 1, 2, … in this order: for an item that joins pages, fronts and backs. */
export function numberSheets<S extends Numbered>(sheets: readonly S[]): readonly S[] {
  return sheets.map((sheet, index) => ({ ...sheet, number: index + 1 }))
}
