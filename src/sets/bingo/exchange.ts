/** Two boards exchange a word that each alone has: what that costs, and doing it. */
import type { Generator } from '../random.js'

/** One flag for each word of a board. */
export type Held = Uint8Array

export interface Exchange {
  readonly one: number
  readonly other: number
  /** The word that `one` gives, and the word that it gets. */
  readonly gives: number
  readonly gets: number
}

export function pickExchange(
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

/**
 * How much the sum of squared meetings over all pairs of words would grow. Tens of thousands are asked for a class's
 * boards, so that the sum is taken over all words without asking which differ.
 */
export function exchangeCost(
  holds: readonly Held[],
  meetings: Int32Array,
  words: number,
  exchange: Exchange,
): number {
  const one = holds[exchange.one]!
  const other = holds[exchange.other]!
  const given = exchange.gives * words
  const gotten = exchange.gets * words
  let half = 0
  for (let word = 0; word < words; word++) {
    // 1 where `one` alone has the word, -1 where `other` has, else 0.
    const side = one[word]! - other[word]!
    half += side * (meetings[gotten + word]! - meetings[given + word]!) + side * side
  }
  // The two words exchanged were counted too: each as often as they meet, and one.
  return 2 * half - 4 * (meetings[gotten + exchange.gives]! + 1)
}

export function applyExchange(
  holds: readonly Held[],
  meetings: Int32Array,
  words: number,
  exchange: Exchange,
): void {
  const { gives, gets } = exchange
  const one = holds[exchange.one]!
  const other = holds[exchange.other]!
  for (let word = 0; word < words; word++) {
    const side = one[word]! - other[word]!
    if (side === 0 || word === gives || word === gets) continue
    meetings[gives * words + word]! -= side
    meetings[word * words + gives]! -= side
    meetings[gets * words + word]! += side
    meetings[word * words + gets]! += side
  }
  one[gives] = 0
  one[gets] = 1
  other[gives] = 1
  other[gets] = 0
}

/** Both boards as they would be, as keys. */
export function keysAfter(holds: readonly Held[], { one, other, gives, gets }: Exchange): [string, string] {
  const changed = (board: number, out: number, into: number): string => {
    const held = Uint8Array.from(holds[board]!)
    held[out] = 0
    held[into] = 1
    return held.join('')
  }
  return [changed(one, gives, gets), changed(other, gets, gives)]
}

/** How often each pair of words meets on a board, as a square table; a word does not meet itself. */
export function countMeetings(holds: readonly Held[], words: number): Int32Array {
  const meetings = new Int32Array(words * words)
  for (const held of holds) {
    const present = wordsHeld(held)
    for (const a of present) for (const b of present) if (a !== b) meetings[a * words + b]!++
  }
  return meetings
}

export function wordsHeld(held: Held): number[] {
  return [...held.keys()].filter(word => held[word] === 1)
}
