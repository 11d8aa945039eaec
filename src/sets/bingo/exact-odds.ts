/**
 * The chance that one board has won when n of w words have been called in random order, exactly: inclusion and exclusion
 * over its goals (Feller, An Introduction to Probability Theory and Its Applications, 3rd ed. 1968, IV.1 and IV.3).
 */
import { type Fraction, fraction } from './fraction.js'
import { binomial } from './subsets.js'

export interface OddsWanted {
  /** Of one board: the words that each goal waits for. */
  readonly goals: readonly (readonly number[])[]
  /** How many goals must be full: 1 or 2. */
  readonly needed: number
  /** All that are called. */
  readonly words: number
}

/** More goals than these have too many subsets; a board of 9 × 9 has 20. */
const MOST_GOALS = 20

/** By the number of calls, from 0 to all; undefined where there are too many goals. */
export function chancesByCall({ goals, needed, words }: OddsWanted): readonly Fraction[] | undefined {
  if (goals.length > MOST_GOALS) return undefined
  const weights = weightsBySize(goals, needed)
  return Array.from({ length: words + 1 }, (_, calls) => {
    let ways = 0n
    for (const [size, weight] of weights) ways += BigInt(weight) * binomial(words - size, calls - size)
    return fraction(ways, binomial(words, calls))
  })
}

/** The sum over the calls of the chance not to have won yet. */
export function meanCall(chances: readonly Fraction[]): number {
  return chances.reduce((sum, { value }) => sum + (1 - value), 0)
}

/**
 * For the number of words in a union of goals, what all unions of that size count for. At least one of the goals is full:
 * +1 for one, −1 for two, +1 for three; at least two: +1 for two, −2 for three, +3 for four.
 */
function weightsBySize(goals: readonly (readonly number[])[], needed: number): ReadonlyMap<number, number> {
  const mostWords = Math.max(0, ...goals.flat()) + 1
  const bySize = new Float64Array(mostWords + 1)
  const timesCovered = new Uint8Array(mostWords)
  const count = (chosen: number): number => {
    if (chosen < needed) return 0
    const sign = (chosen - needed) % 2 === 0 ? 1 : -1
    return needed === 1 ? sign : sign * (chosen - 1)
  }
  const choose = (from: number, chosen: number, size: number): void => {
    if (chosen > 0) bySize[size]! += count(chosen)
    for (let index = from; index < goals.length; index++) {
      let added = 0
      for (const word of goals[index]!) if (timesCovered[word]!++ === 0) added++
      choose(index + 1, chosen + 1, size + added)
      for (const word of goals[index]!) timesCovered[word]!--
    }
  }
  choose(0, 0, 0)
  return new Map([...bySize.entries()].filter(([, weight]) => weight !== 0))
}
