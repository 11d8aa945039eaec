/** Deals boards for children of different words who play one game. */
import { failWith, succeed } from '../../outcomes.js'
import type { Outcome } from '../../problems.js'
import type { Board } from './board.js'
import { type BoardDeal, type BoardsWanted, dealBoards, type Spread } from './deal-boards.js'

/** Words of which some boards are dealt. */
export interface Pool {
  /** Whose they are, to tell of: `Otters`. */
  readonly name: string
  /** Indices of the words of the game. */
  readonly words: readonly number[]
}

/**
 * As many boards for each pool as are wanted, those of the first pool first, each of words of its own pool. Pools of the
 * same words are dealt together, so that no two of their boards are alike where that can be.
 */
export function dealPools(wanted: BoardsWanted, pools: readonly Pool[]): Outcome<BoardDeal> {
  const kinds = [...new Set(pools.map(nameOfWords))]
  const dealt = kinds.map((kind, index) => {
    const alike = pools.filter(pool => nameOfWords(pool) === kind)
    const deal = dealBoards({
      ...wanted,
      words: alike[0]!.words.length,
      boards: wanted.boards * alike.length,
      label: `${wanted.label}: words ${index + 1}`,
    })
    return { kind, alike, deal }
  })
  const failed = dealt.flatMap(({ alike, deal }) =>
    deal.ok
      ? []
      : deal.problems.map(problem => ({ ...problem, message: `${namesOf(alike)}: ${problem.message}` })),
  )
  if (failed.length > 0) return failWith(failed)
  const deals = dealt.flatMap(({ kind, alike, deal }) => (deal.ok ? [{ kind, alike, deal: deal.value }] : []))
  const taken = new Map<string, number>()
  const boards = pools.flatMap(pool => {
    const { deal } = deals.find(({ kind }) => kind === nameOfWords(pool))!
    const from = taken.get(nameOfWords(pool)) ?? 0
    taken.set(nameOfWords(pool), from + wanted.boards)
    return deal.boards.slice(from, from + wanted.boards).map(board => inGame(board, pool))
  })
  const { columns, rows, freeCentre, words } = wanted
  return succeed({
    grid: { columns, rows, freeCentre },
    words,
    boards,
    uses: widest(deals.map(({ deal }) => deal.uses)),
    meetings: widest(deals.map(({ deal }) => deal.meetings)),
    notes: deals.flatMap(({ alike, deal }) => deal.notes.map(note => `${namesOf(alike)}: ${note}`)),
  })
}

function inOrder({ words }: Pool): readonly number[] {
  return words.toSorted((a, b) => a - b)
}

function nameOfWords(pool: Pool): string {
  return inOrder(pool).join()
}

function namesOf(pools: readonly Pool[]): string {
  return pools.map(({ name }) => name).join(', ')
}

/** A board's words as those of the game. */
function inGame(board: Board, pool: Pool): Board {
  const words = inOrder(pool)
  return board.map(row => row.map(word => (word === null ? null : words[word]!)))
}

function widest(spreads: readonly Spread[]): Spread {
  return {
    least: Math.min(...spreads.map(({ least }) => least)),
    most: Math.max(...spreads.map(({ most }) => most)),
  }
}
