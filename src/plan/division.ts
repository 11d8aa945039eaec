/** How a sheet is divided: `across` and `down`, or `card`. */

import type { Size } from '../geometry.js'
import { errorAt, type Outcome, type Place } from '../problems.js'
import { fail, present, succeed } from './outcomes.js'
import type { Division } from './plan.js'

export interface DivisionKeys {
  readonly across?: number
  readonly down?: number
  readonly card?: Size
}

export function divisionOf(
  { across, down, card }: DivisionKeys,
  cardPlace: Place | undefined,
): Outcome<Division> {
  const counted = across !== undefined || down !== undefined
  if (card && counted && cardPlace) {
    const message = '"card" stands together with "across" or "down"'
    return fail(
      errorAt(cardPlace, message, 'Give the size of a card, or how many stand on a sheet; not both.'),
    )
  }
  if (card) return succeed({ kind: 'card', size: card })
  return succeed(counted ? { kind: 'count', ...present({ across, down }) } : { kind: 'layout' })
}
