/**
 * How likely one grapheme with its sounds follows the three before it: a joint n-gram model over aligned graphemes
 * (Galescu and Allen 2001), smoothed after Witten and Bell (1991). It serves words that no dictionary holds.
 */

/** A grapheme with its sounds, stress marked: `{ letters: 'ea', sounds: ['IY1'] }`. */
export interface JointToken {
  readonly letters: string
  readonly sounds: readonly string[]
}

/**
 * Runs of one to `order` tokens, sorted by key: how often each was seen, how many kinds of token follow it, and how
 * often one of the runs kept follows it.
 */
export interface RunCounts {
  readonly keys: Float64Array
  readonly counts: Uint32Array
  readonly followers: Uint32Array
  readonly followed: Uint32Array
}

export interface JointModel {
  /** The first two stand for the word's beginning and its end. */
  readonly tokens: readonly JointToken[]
  /** By length, from 1. */
  readonly runs: readonly RunCounts[]
}

export const order = 4
export const beginning = 0
export const ending = 1
/** A token takes 12 bits of a run's key, so that four fit a double exactly. */
export const tokenSpan = 4096

export function keyOf(run: readonly number[]): number {
  return run.reduce((key, token) => key * tokenSpan + token, 0)
}

/** Negative natural logarithm of the probability of `token` after `history` (the newest last, at most three). */
export function costOf(model: JointModel, history: readonly number[], token: number): number {
  return -Math.log(probabilityOf(model, history, token))
}

function probabilityOf(model: JointModel, history: readonly number[], token: number): number {
  if (history.length === 0) {
    const { counts } = model.runs[0]!
    const at = indexOf(model.runs[0]!, token)
    return ((at < 0 ? 0 : counts[at]!) + 0.1) / (totalOf(model) + 0.1 * model.tokens.length)
  }
  const shorter = probabilityOf(model, history.slice(1), token)
  const runs = model.runs[history.length - 1]!
  const at = indexOf(runs, keyOf(history))
  if (at < 0 || runs.followers[at] === 0) return shorter
  const longer = model.runs[history.length]!
  const found = indexOf(longer, keyOf([...history, token]))
  const count = found < 0 ? 0 : longer.counts[found]!
  return (count + runs.followers[at]! * shorter) / (runs.followed[at]! + runs.followers[at]!)
}

const totals = new WeakMap<JointModel, number>()

function totalOf(model: JointModel): number {
  const known = totals.get(model)
  if (known !== undefined) return known
  const total = model.runs[0]!.counts.reduce((sum, count) => sum + count, 0)
  totals.set(model, total)
  return total
}

function indexOf({ keys }: RunCounts, key: number): number {
  let low = 0
  let high = keys.length - 1
  while (low <= high) {
    const middle = (low + high) >> 1
    const found = keys[middle]!
    if (found === key) return middle
    if (found < key) low = middle + 1
    else high = middle - 1
  }
  return -1
}
