/**
 * Chooses which words are on which board: every word equally often (± 1), no two boards the same while the words
 * allow it, and pairs of words together as equally often as a seeded search can make them.
 *
 * Where r = boards·size/words and λ = r(size − 1)/(words − 1) are whole, a balanced incomplete block design may
 * exist (Fisher 1940), in which every pair meets λ times; elsewhere the search comes as near as it can. The sum of
 * squares that it lowers is, but for a constant, the same as over pairs of boards and the words they share: boards
 * whose pairs are even are also as unlike each other as they can be.
 */
import type { Generator } from '../random.js'
import { shuffle } from '../random.js'
import {
  applyExchange,
  countMeetings,
  exchangeCost,
  type Held,
  holding,
  keyOf,
  keysAfter,
  pickExchange,
  wordsHeld,
} from './exchange.js'
import { binomial, everySubset } from './subsets.js'

export interface SubsetsWanted {
  /** How many words there are. */
  readonly words: number
  /** How many of them a board holds. */
  readonly size: number
  readonly boards: number
}

/** For each board, the indices of its words, in ascending order. */
export function chooseEvenSubsets(wanted: SubsetsWanted, generator: Generator): number[][] {
  const { words, size, boards } = wanted
  if (boards === 0) return []
  const subsets = binomial(words, size)
  // More boards than subsets: each subset serves equally often, and the rest is chosen evenly.
  if (BigInt(boards) >= subsets) {
    const rest = boards % Number(subsets)
    const wholeRounds = Array.from({ length: (boards - rest) / Number(subsets) }, () =>
      everySubset(words, size),
    )
    return shuffle(
      [...wholeRounds.flat(), ...chooseEvenSubsets({ ...wanted, boards: rest }, generator)],
      generator,
    )
  }
  // More than half of all subsets: what is left out is easier to choose evenly, and what stays is then even too.
  if (2n * BigInt(boards) > subsets) {
    const leftOut = new Set(
      chooseEvenSubsets({ ...wanted, boards: Number(subsets) - boards }, generator).map(String),
    )
    return shuffle(
      everySubset(words, size).filter(subset => !leftOut.has(String(subset))),
      generator,
    )
  }
  const holds = dealEvenly(wanted, generator)
  evenOutPairs(holds, wanted, generator)
  partTwins(holds, wanted, generator)
  return holds.map(wordsHeld)
}

/** Every word on the same number of boards, ± 1: each board takes the words with most places still to fill. */
function dealEvenly({ words, size, boards }: SubsetsWanted, generator: Generator): Held[] {
  const places = boards * size
  const order = shuffle(
    Array.from({ length: words }, (_, word) => word),
    generator,
  )
  const left = new Array<number>(words).fill(Math.floor(places / words))
  for (const word of order.slice(0, places % words)) left[word]!++
  return Array.from({ length: boards }, () => {
    const taken = shuffle(order, generator)
      .sort((a, b) => left[b]! - left[a]!)
      .slice(0, size)
    for (const word of taken) left[word]!--
    return holding(taken, words)
  })
}

/**
 * Two boards exchange a word that each alone has, which leaves every word's count as it was. Whatever makes pairs no
 * less even is taken: level steps lead off the plains where a search that only climbs would stand still. (Taking small
 * losses at first, as in simulated annealing, came out less even in our trials at the same number of steps.)
 */
function evenOutPairs(holds: Held[], wanted: SubsetsWanted, generator: Generator): void {
  const { words, size, boards } = wanted
  if (boards < 2 || size === words) return
  const meetings = countMeetings(holds, words)
  const goal = leastSumOfSquares((boards * size * (size - 1)) / 2, (words * (words - 1)) / 2)
  let sum = meetings.reduce((total, count) => total + count * count, 0) / 2
  const steps = Math.min(60_000, 500 * boards + 50 * boards * size)
  for (let step = 0; step < steps && sum > goal; step++) {
    const exchange = pickExchange(holds, words, generator)
    if (exchange === null) continue
    const change = exchangeCost(holds, meetings, words, exchange)
    if (change > 0) continue
    applyExchange(holds, meetings, words, exchange)
    sum += change
  }
}

/** Exchanges words until no two boards are the same, taking of a few exchanges that part twins the most even one. */
function partTwins(holds: Held[], { words }: SubsetsWanted, generator: Generator): void {
  const meetings = countMeetings(holds, words)
  for (let attempt = 0; attempt < 200; attempt++) {
    const keys = holds.map(keyOf)
    const twin = firstTwin(keys)
    if (twin < 0) return
    const candidates = Array.from({ length: 60 }, () => pickExchange(holds, words, generator, twin))
      .filter(exchange => exchange !== null)
      .filter(exchange => {
        const [one, other] = keysAfter(holds, exchange)
        return one !== other && !keys.includes(one) && !keys.includes(other)
      })
      .map(exchange => ({ exchange, cost: exchangeCost(holds, meetings, words, exchange) }))
      .sort((a, b) => a.cost - b.cost)
    if (candidates[0]) applyExchange(holds, meetings, words, candidates[0].exchange)
  }
}

/** The first board that is as one before it; below nought where none is. */
function firstTwin(keys: readonly string[]): number {
  const seen = new Set<string>()
  return keys.findIndex(key => seen.size === seen.add(key).size)
}

/** The sum of squares when `total` meetings are spread over `pairs` as evenly as whole numbers allow. */
function leastSumOfSquares(total: number, pairs: number): number {
  const each = Math.floor(total / pairs)
  const more = total - each * pairs
  return more * (each + 1) ** 2 + (pairs - more) * each ** 2
}
