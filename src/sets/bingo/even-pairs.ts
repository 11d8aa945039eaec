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

/** One flag for each word of a board. */
type Held = Uint8Array

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
    const held = new Uint8Array(words)
    for (const word of taken) {
      held[word] = 1
      left[word]!--
    }
    return held
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
    const keys = holds.map(held => held.join(''))
    const twin = keys.findIndex((key, board) => keys.indexOf(key) < board)
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

interface Exchange {
  readonly one: number
  readonly other: number
  /** The word that `one` gives, and the word that it gets. */
  readonly gives: number
  readonly gets: number
}

function pickExchange(
  holds: readonly Held[],
  words: number,
  generator: Generator,
  board?: number,
): Exchange | null {
  const one = board ?? generator.below(holds.length)
  const other = generator.below(holds.length)
  const gives = wordAlone(holds[one]!, holds[other]!, generator.below(words))
  const gets = wordAlone(holds[other]!, holds[one]!, generator.below(words))
  return gives === null || gets === null ? null : { one, other, gives, gets }
}

/** The first word from `offset` on, round the list, that one board has and the other has not. */
function wordAlone(mine: Held, theirs: Held, offset: number): number | null {
  for (let word = offset; word < mine.length; word++) if (mine[word]! > theirs[word]!) return word
  for (let word = 0; word < offset; word++) if (mine[word]! > theirs[word]!) return word
  return null
}

/** How much the sum of squared meetings over all pairs of words would grow. */
function exchangeCost(
  holds: readonly Held[],
  meetings: Int32Array,
  words: number,
  exchange: Exchange,
): number {
  const one = holds[exchange.one]!
  const other = holds[exchange.other]!
  let half = 0
  for (let word = 0; word < words; word++) {
    if (one[word] === other[word] || word === exchange.gives || word === exchange.gets) continue
    const givenMeets = meetings[exchange.gives * words + word]!
    const gottenMeets = meetings[exchange.gets * words + word]!
    half += one[word] === 1 ? gottenMeets - givenMeets + 1 : givenMeets - gottenMeets + 1
  }
  return 2 * half
}

function applyExchange(
  holds: readonly Held[],
  meetings: Int32Array,
  words: number,
  exchange: Exchange,
): void {
  const { gives, gets } = exchange
  const one = holds[exchange.one]!
  const other = holds[exchange.other]!
  const add = (a: number, b: number, count: number) => {
    meetings[a * words + b]! += count
    meetings[b * words + a]! += count
  }
  for (let word = 0; word < words; word++) {
    if (one[word] === other[word] || word === gives || word === gets) continue
    const sign = one[word] === 1 ? 1 : -1
    add(gives, word, -sign)
    add(gets, word, sign)
  }
  one[gives] = 0
  one[gets] = 1
  other[gives] = 1
  other[gets] = 0
}

/** Both boards as they would be, as keys. */
function keysAfter(holds: readonly Held[], { one, other, gives, gets }: Exchange): [string, string] {
  const changed = (board: number, out: number, into: number): string => {
    const held = Uint8Array.from(holds[board]!)
    held[out] = 0
    held[into] = 1
    return held.join('')
  }
  return [changed(one, gives, gets), changed(other, gets, gives)]
}

/** How often each pair of words meets on a board, as a square table; a word does not meet itself. */
function countMeetings(holds: readonly Held[], words: number): Int32Array {
  const meetings = new Int32Array(words * words)
  for (const held of holds) {
    const present = wordsHeld(held)
    for (const a of present) for (const b of present) if (a !== b) meetings[a * words + b]!++
  }
  return meetings
}

/** The sum of squares when `total` meetings are spread over `pairs` as evenly as whole numbers allow. */
function leastSumOfSquares(total: number, pairs: number): number {
  const each = Math.floor(total / pairs)
  const more = total - each * pairs
  return more * (each + 1) ** 2 + (pairs - more) * each ** 2
}

function wordsHeld(held: Held): number[] {
  return [...held.keys()].filter(word => held[word] === 1)
}
