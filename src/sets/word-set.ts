/** Card sets of single words, and of boards. */
import type { Word } from '../words/word.js'
import type { CallOrder } from './bingo/call-order.js'
import type { BoardDeal } from './bingo/deal-boards.js'
import { cardId } from './card-id.js'
import type { Card, CardSet } from './card-set.js'
import { generatorFor, shuffle } from './random.js'

export interface WordCardsWanted {
  readonly words: readonly Word[]
  /** How many of each card. */
  readonly copies: number
  readonly order: 'given' | 'shuffled'
  readonly seed: number
  /** What the chance is for: the item's name, say. */
  readonly label: string
  /** Opens each id, e.g. `card`. */
  readonly prefix: string
}

/** A card for each word, `card-01`, `card-02`, …; the whole set once for each copy, copies sharing their number. */
export function cardsForWords(wanted: WordCardsWanted): CardSet {
  const { words, copies, order, prefix } = wanted
  const ordered =
    order === 'given' ? words : shuffle(words, generatorFor(wanted.seed, `${wanted.label}: cards`))
  return {
    cards: inCopies(copies, copy =>
      ordered.map((word, index) => ({
        id: cardId({ prefix, number: index + 1, copy, of: words.length }),
        kind: 'card',
        number: index + 1,
        copy,
        words: [word],
      })),
    ),
  }
}

export interface BoardSetWanted {
  /** The words that were dealt, in the order of the deal's indices. */
  readonly words: readonly Word[]
  readonly deal: BoardDeal
  readonly calls: CallOrder
  readonly copies: number
}

/** A card for each board, `board-01`, `board-02`, …, with its cells, and the calls with each board's first line. */
export function boardSet({ words, deal, calls, copies }: BoardSetWanted): CardSet {
  const id = (board: number, copy: number): string =>
    cardId({ prefix: 'board', number: board + 1, copy, of: deal.boards.length })
  return {
    cards: inCopies(copies, copy =>
      deal.boards.map((board, index) => {
        const cells = board.map(row => row.map(word => (word === null ? null : wordAt(words, word))))
        return {
          id: id(index, copy),
          kind: 'board',
          number: index + 1,
          copy,
          words: cells.flat().filter(word => word !== null),
          cells,
        }
      }),
    ),
    deal: {
      callOrder: calls.callOrder.map(word => wordAt(words, word).text),
      wins: calls.wins.map((call, board) => ({ board: id(board, 1), call })),
      full: calls.full.map((call, board) => ({ board: id(board, 1), call })),
    },
  }
}

function inCopies(copies: number, cardsOf: (copy: number) => readonly Card[]): readonly Card[] {
  return Array.from({ length: copies }, (_, index) => cardsOf(index + 1)).flat()
}

function wordAt(words: readonly Word[], index: number): Word {
  const word = words[index]
  if (word === undefined)
    throw new RangeError(`the deal names word ${index + 1}, and there are ${words.length}`)
  return word
}
