/** A closed sort: headers that name the columns, and the cards to lay under them. */
import type { Word } from '../../words/word.js'
import { cardId } from '../card-id.js'
import type { Card, CardSet } from '../card-set.js'
import { orderWithoutHints } from './order-without-hints.js'
import type { Sort } from './sort.js'
import type { SortHeading } from './sort-heading.js'

export interface ClosedSortWanted {
  readonly sort: Sort
  readonly headings: readonly SortHeading[]
  readonly words: readonly Word[]
  readonly copies: number
  readonly seed: number
  readonly label: string
}

/** Headers first (`header-01`, …), then the cards in an order that gives nothing away; one run of numbers for both. */
export function closedSort({ sort, headings, words, copies, seed, label }: ClosedSortWanted): CardSet {
  const laid = new Set(headings.flatMap(heading => heading.words))
  const cards = orderWithoutHints({
    words: words.filter(word => laid.has(word.text)),
    sorts: [sort],
    seed,
    label,
  })
  const of = headings.length + cards.length
  const setOf = (copy: number): readonly Card[] => [
    ...headings.map(({ title, keyWord }, index): Card => {
      const number = index + 1
      const id = cardId({ prefix: 'header', number, copy, of })
      return { id, kind: 'header', number, copy, words: keyWord === undefined ? [] : [keyWord], title }
    }),
    ...cards.map((word, index): Card => {
      const number = headings.length + index + 1
      return { id: cardId({ prefix: 'card', number, copy, of }), kind: 'card', number, copy, words: [word] }
    }),
  ]
  return {
    cards: Array.from({ length: copies }, (_, index) => setOf(index + 1)).flat(),
    answers: headings.map(({ title, words: own }) => ({
      text: title,
      numbers: setOf(1)
        .filter(({ kind, words: [word] }) => kind === 'card' && own.includes(word!.text))
        .map(card => card.number),
    })),
  }
}
