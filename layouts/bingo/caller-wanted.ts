import type { CardSet, Round } from '../../src/sets/card-set.js'
import type { LayoutRequest } from '../layout.js'
import type { SaidAndShown } from './played-words.js'

/** One round of a set of boards, for the sheet of whoever calls it. */
export interface CallerWanted {
  readonly request: LayoutRequest
  readonly set: CardSet
  readonly round: Round
  /** What is said and shown. */
  readonly game: SaidAndShown
  /** What the caller reads out for a word, by its text; undefined where it is the word itself. */
  readonly saidFor: ReadonlyMap<string, string> | undefined
  readonly widthMm: number
}
