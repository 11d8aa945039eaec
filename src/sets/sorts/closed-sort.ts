/** A closed sort: headers that name the columns, and the cards to lay under them. */
import { present } from '../../outcomes.js'
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
  /** What stands on the card that goes with a word's, where words have partners. */
  readonly partnerOf?: (word: Word) => string | undefined
  readonly copies: number
  readonly seed: number
  readonly label: string
}

/**
 * Headers first (`header-01`, …), then the cards in an order that gives nothing away, then those of their partners in
 * another such order; one run of numbers for all.
 */
export function closedSort({
  sort,
  headings,
  words,
  partnerOf = () => undefined,
  copies,
  seed,
  label,
}: ClosedSortWanted): CardSet {
  const laid = new Set(headings.flatMap(heading => heading.words))
  const sorted = words.filter(word => laid.has(word.text))
  const listed = new Set(words.map(({ text }) => text))
  const partnered = sorted.filter(word => {
    const partner = partnerOf(word)
    return partner !== undefined && (partner === word.text || !listed.has(partner))
  })
  const inOrder = (own: readonly Word[], of: string) =>
    orderWithoutHints({ words: own, sorts: [sort], seed, label: of })
  const cards: readonly Pick<Card, 'words' | 'title' | 'shows'>[] = [
    ...inOrder(sorted, label).map(word => ({ words: [word] })),
    ...inOrder(partnered, `${label}: partners`).map(word => ({
      words: [word],
      ...present({ title: partnerOf(word) }),
      shows: 'form' as const,
    })),
  ]
  const of = headings.length + cards.length
  const setOf = (copy: number): readonly Card[] => [
    ...headings.map(({ title, keyWord }, index): Card => {
      const number = index + 1
      const id = cardId({ prefix: 'header', number, copy, of })
      return { id, kind: 'header', number, copy, words: keyWord === undefined ? [] : [keyWord], title }
    }),
    ...cards.map((card, index): Card => {
      const number = headings.length + index + 1
      return { id: cardId({ prefix: 'card', number, copy, of }), kind: 'card', number, copy, ...card }
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
