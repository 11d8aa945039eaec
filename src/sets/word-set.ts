/** Card sets of single words, and of boards. */
import type { Word } from '../words/word.js'
import type { BingoGame } from './bingo/bingo-game.js'
import type { CallOrder } from './bingo/call-order.js'
import { cardId } from './card-id.js'
import type { BoardAtCall, Card, CardSet, Round } from './card-set.js'
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
  readonly game: Pick<BingoGame, 'deal' | 'rounds'>
  readonly copies: number
}

/** A card for each board, `board-01`, `board-02`, …, with its cells, and the calls of each round. */
export function boardSet({ words, game, copies }: BoardSetWanted): CardSet {
  const { boards } = game.deal
  const id = (board: number, copy: number): string =>
    cardId({ prefix: 'board', number: board + 1, copy, of: boards.length })
  const [first, ...later] = game.rounds.map(calls => roundOf(calls, words, board => id(board, 1)))
  return {
    cards: inCopies(copies, copy =>
      boards.map((board, index) => {
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
      ...first!,
      rule: game.rounds[0]!.rule,
      ...(later.length === 0 ? {} : { laterRounds: later }),
    },
  }
}

function roundOf(calls: CallOrder, words: readonly Word[], id: (board: number) => string): Round {
  const atCalls = (found: readonly number[]): readonly BoardAtCall[] =>
    found.map((call, board) => ({ board: id(board), call }))
  return {
    callOrder: calls.callOrder.map(word => wordAt(words, word).text),
    wins: atCalls(calls.lines),
    full: atCalls(calls.full),
    ...(calls.rule === 'line' ? {} : { winsByRule: atCalls(calls.wins) }),
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
