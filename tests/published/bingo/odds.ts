/** What follows from the exact chances of one board, as books give it. */
import { type BoardGrid, wordsPerBoard } from '../../../src/sets/bingo/board.js'
import { chancesByCall } from '../../../src/sets/bingo/exact-odds.js'
import { gameOf } from '../../../src/sets/bingo/first-wins.js'
import { type Fraction, fraction } from '../../../src/sets/bingo/fraction.js'

export interface OneBoardOdds {
  /** Probability that one board has a line by call n, for n = 0 to the number of words. */
  readonly lineByCall: readonly Fraction[]
  /** Mean number of calls to the first line. */
  readonly meanCalls: Fraction
  /** Standard deviation of that number. */
  readonly deviation: number
  /** The first call by which the board has a line in at least half of all games. */
  readonly medianCall: number
}

/** One board with its words drawn from `words`, called in random order. */
export function oneBoardOdds(grid: BoardGrid, words: number): OneBoardOdds {
  if (words < wordsPerBoard(grid)) throw new RangeError(`${words} words do not fill the board`)
  const middle = grid.columns % 2 === 1 && grid.rows % 2 === 1 && grid.freeCentre
  let word = 0
  const board = Array.from({ length: grid.rows }, (_, row) =>
    Array.from({ length: grid.columns }, (_, column) =>
      middle && row * grid.columns + column === (grid.columns * grid.rows - 1) / 2 ? null : word++,
    ),
  )
  const { goals, needed } = gameOf({ boards: [board], grid, words, rule: 'line' })
  const lineByCall = chancesByCall({ goals: goals[0]!, needed, words })!
  // E(T) is the sum of P(T > n), and E(T²) the sum of (2n + 1) P(T > n), over n = 0, 1, 2, …
  const open = lineByCall.map(({ over, under }) => fraction(under - over, under))
  const meanCalls = open.reduce(sum, fraction(0n, 1n))
  const meanSquare = open
    .map(({ over, under }, call) => fraction(BigInt(2 * call + 1) * over, under))
    .reduce(sum, fraction(0n, 1n))
  const variance = sum(meanSquare, fraction(-(meanCalls.over ** 2n), meanCalls.under ** 2n))
  return {
    lineByCall,
    meanCalls,
    deviation: Math.sqrt(variance.value),
    medianCall: lineByCall.findIndex(({ over, under }) => 2n * over >= under),
  }
}

function sum(a: Fraction, b: Fraction): Fraction {
  return fraction(a.over * b.under + b.over * a.under, a.under * b.under)
}
