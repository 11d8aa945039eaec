import { succeed } from '../src/outcomes.js'
import type { Outcome } from '../src/problems.js'
import type { CardSet } from '../src/sets/card-set.js'
import { cardsForWords } from '../src/sets/word-set.js'
import type { LayoutRequest } from './layout.js'

/** A card for each word in the order of the list, in as many copies as the item asks for. */
export function oneCardAWord({ words, item, itemName, plan }: LayoutRequest): Outcome<CardSet> {
  const value = cardsForWords({
    words,
    copies: item.copies,
    order: 'given',
    seed: plan.seed,
    label: itemName,
    prefix: 'card',
  })
  return succeed(value)
}
