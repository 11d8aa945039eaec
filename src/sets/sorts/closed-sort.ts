/** A closed sort: headers that name the columns, and the cards to lay under them. */
import type { Word } from '../../words/word.js'
import { cardId } from '../card-id.js'
import type { Card, CardSet } from '../card-set.js'
import { orderWithoutHints } from './order-without-hints.js'
import type { Sort } from './sort.js'

export interface ClosedSortWanted {
  readonly sort: Sort
  readonly words: readonly Word[]
  /** Words that stand in no column go in under a header of their own, or stay out. */
  readonly leftovers: 'own header' | 'leave out'
  /** What the leftovers' header says. */
  readonly leftoversTitle: string
  readonly copies: number
  readonly seed: number
  readonly label: string
}

/** Headers first (`header-01`, …), then the cards in an order that gives nothing away; one run of numbers for both. */
export function closedSort(wanted: ClosedSortWanted): CardSet {
  const { sort, words, copies, seed, label } = wanted
  const withLeftovers = wanted.leftovers === 'own header' && sort.leftovers.length > 0
  const columns = [
    ...sort.columns,
    ...(withLeftovers ? [{ title: wanted.leftoversTitle, words: sort.leftovers }] : []),
  ]
  const titles = columns.map(column => column.title)
  const laid = new Set(columns.flatMap(column => column.words))
  const cards = orderWithoutHints({
    words: words.filter(word => laid.has(word.text)),
    sorts: [sort],
    seed,
    label,
  })
  const of = titles.length + cards.length
  const setOf = (copy: number): readonly Card[] => [
    ...titles.map((title, index): Card => {
      const number = index + 1
      return {
        id: cardId({ prefix: 'header', number, copy, of }),
        kind: 'header',
        number,
        copy,
        words: [],
        title,
      }
    }),
    ...cards.map((word, index): Card => {
      const number = titles.length + index + 1
      return { id: cardId({ prefix: 'card', number, copy, of }), kind: 'card', number, copy, words: [word] }
    }),
  ]
  return {
    cards: Array.from({ length: copies }, (_, index) => setOf(index + 1)).flat(),
    answers: columns.map(column => ({
      text: column.title,
      numbers: setOf(1)
        .filter(card => card.words.some(word => column.words.includes(word.text)))
        .map(card => card.number),
    })),
  }
}
