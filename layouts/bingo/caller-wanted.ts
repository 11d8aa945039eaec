import type { CardSet, Round } from '../../src/sets/card-set.js'
import type { LayoutRequest } from '../layout.js'

/** One round of a set of boards, for the sheet of whoever calls it. */
export interface CallerWanted {
  readonly request: LayoutRequest
  readonly set: CardSet
  readonly round: Round
  readonly widthMm: number
}

/** As the foot of the board has it: 7 of `board-07`. */
export function numberOf(board: string): string {
  return String(Number(board.replace(/^board-(\d+).*$/, '$1')))
}
