/** The odds of a game, exactly for one board, by seeded play for a class. */
import { type BoardGrid, freeCell, linesOf, wordsPerBoard } from '../../../src/sets/bingo/board.js'
import { type Fraction, fraction } from '../../../src/sets/bingo/fraction.js'
import { binomial } from '../../../src/sets/bingo/subsets.js'

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

/**
 * One board with its words drawn from `words`, called in random order: inclusion and exclusion over the sets of
 * lines. A set of lines that needs m words is full by call n with probability C(words − m, n − m) / C(words, n).
 * Throws a RangeError where the words do not fill the board, or the grid has more than 20 lines (2^20 sets of lines).
 */
export function oneBoardOdds(grid: BoardGrid, words: number): OneBoardOdds {
  if (words < wordsPerBoard(grid)) throw new RangeError(`${words} words do not fill the board`)
  const signedSets = signedLineSets(grid)
  const lineByCall = Array.from({ length: words + 1 }, (_, call) => {
    let favourable = 0n
    signedSets.forEach((count, needed) => {
      if (needed <= call) favourable += count * binomial(words - needed, call - needed)
    })
    return fraction(favourable, binomial(words, call))
  })
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

/** For each number of words m: how many sets of an odd number of lines need m words, less those of an even number. */
function signedLineSets(grid: BoardGrid): bigint[] {
  const lines = linesOf(grid)
  if (lines.length > 20) throw new RangeError(`a grid of ${lines.length} lines is too large for exact odds`)
  const free = freeCell(grid)
  const needs = lines.map(line => line.filter(cell => cell !== free))
  const counts = new Array<bigint>(wordsPerBoard(grid) + 1).fill(0n)
  const covered = new Array<number>(grid.columns * grid.rows).fill(0)
  const visit = (line: number, needed: number, sign: bigint, empty: boolean): void => {
    if (line === needs.length) {
      if (!empty) counts[needed]! += sign
      return
    }
    visit(line + 1, needed, sign, empty)
    let more = 0
    for (const cell of needs[line]!) if (covered[cell]!++ === 0) more++
    visit(line + 1, needed + more, -sign, false)
    for (const cell of needs[line]!) covered[cell]!--
  }
  // With no line chosen the sign is −1, so that each single line counts +1, each pair −1, and so on.
  visit(0, 0, -1n, true)
  return counts
}

function sum(a: Fraction, b: Fraction): Fraction {
  return fraction(a.over * b.under + b.over * a.under, a.under * b.under)
}
