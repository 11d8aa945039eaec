/** Two boards exchange a word that each alone has: what that costs, and doing it. */
import type { Generator } from '../random.js'

/** A bit for each word of a board, 32 of them in a number: tens of thousands of exchanges are weighed for a class's boards. */
export type Held = Int32Array

export function holding(board: readonly number[], words: number): Held {
  const held = new Int32Array(Math.ceil(words / 32))
  for (const word of board) take(held, word)
  return held
}

function take(held: Held, word: number): void {
  held[word >>> 5]! |= 1 << (word & 31)
}

function give(held: Held, word: number): void {
  held[word >>> 5]! &= ~(1 << (word & 31))
}

/** The place of the lowest bit that is set; of the number 0 there is none. */
function lowestBit(bits: number): number {
  return 31 - Math.clz32(bits & -bits)
}

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
  const first = offset >>> 5
  const fromOffset = mine[first]! & ~theirs[first]! & (-1 << (offset & 31))
  if (fromOffset !== 0) return (first << 5) + lowestBit(fromOffset)
  for (let step = 1; step <= mine.length; step++) {
    const at = first + step < mine.length ? first + step : first + step - mine.length
    const alone = mine[at]! & ~theirs[at]!
    if (alone !== 0) return (at << 5) + lowestBit(alone)
  }
  return null
}

/** How much the sum of squared meetings over all pairs of words would grow. */
export function exchangeCost(
  holds: readonly Held[],
  meetings: Int32Array,
  words: number,
  { one, other, gives, gets }: Exchange,
): number {
  // In as few steps as can be, and making nothing: tens of thousands are weighed before V8 has compiled this for speed.
  const mine = holds[one]!
  const theirs = holds[other]!
  const given = gives * words
  const gotten = gets * words
  let half = 0
  for (let at = 0; at < mine.length; at++) {
    for (let bits = mine[at]! & ~theirs[at]!; bits !== 0; bits &= bits - 1) {
      const word = (at << 5) + lowestBit(bits)
      half += meetings[gotten + word]! - meetings[given + word]! + 1
    }
    for (let bits = theirs[at]! & ~mine[at]!; bits !== 0; bits &= bits - 1) {
      const word = (at << 5) + lowestBit(bits)
      half -= meetings[gotten + word]! - meetings[given + word]! - 1
    }
  }
  // The two words exchanged were counted too: each as often as they meet, and one.
  return 2 * half - 4 * (meetings[gotten + gives]! + 1)
}

export function applyExchange(
  holds: readonly Held[],
  meetings: Int32Array,
  words: number,
  { one, other, gives, gets }: Exchange,
): void {
  const mine = holds[one]!
  const theirs = holds[other]!
  const meet = (word: number, more: number): void => {
    if (word === gives || word === gets) return
    meetings[gives * words + word]! -= more
    meetings[word * words + gives]! -= more
    meetings[gets * words + word]! += more
    meetings[word * words + gets]! += more
  }
  for (const word of wordsOf(mine, theirs)) meet(word, 1)
  for (const word of wordsOf(theirs, mine)) meet(word, -1)
  give(mine, gives)
  take(mine, gets)
  give(theirs, gets)
  take(theirs, gives)
}

/** In ascending order; without those that another board has too. */
function wordsOf(held: Held, without?: Held): number[] {
  const words: number[] = []
  for (let at = 0; at < held.length; at++)
    for (let bits = held[at]! & ~(without?.[at] ?? 0); bits !== 0; bits &= bits - 1)
      words.push((at << 5) + lowestBit(bits))
  return words
}

/** Both boards as they would be, as keys. */
export function keysAfter(holds: readonly Held[], { one, other, gives, gets }: Exchange): [string, string] {
  const changed = (board: number, out: number, into: number): string => {
    const held = Int32Array.from(holds[board]!)
    give(held, out)
    take(held, into)
    return keyOf(held)
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

/** In ascending order. */
export function wordsHeld(held: Held): number[] {
  return wordsOf(held)
}

/** Equal for boards of the same words. */
export function keyOf(held: Held): string {
  return held.join()
}
