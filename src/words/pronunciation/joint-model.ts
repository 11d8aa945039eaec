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

/** What the model knows of the newest tokens of a history, by how many of them: worked out once for all that may follow. */
export interface Context {
  /** Keys of the newest one, two, three. */
  readonly keys: readonly number[]
  /** Where each of them lies among the runs of its length; -1 for one that was never seen. */
  readonly places: readonly number[]
}

/** @param history the newest last, at most three */
export function contextOf(model: JointModel, history: readonly number[]): Context {
  const [keys, places]: [number[], number[]] = [[], []]
  let key = 0
  for (let length = 1; length <= history.length; length++) {
    key += history[history.length - length]! * tokenSpan ** (length - 1)
    keys.push(key)
    places.push(indexOf(model.runs[length - 1]!, key))
  }
  return { keys, places }
}

/** Negative natural logarithm of the probability of `token` after what came before it. */
export function costOf(model: JointModel, { keys, places }: Context, token: number): number {
  const { counts } = model.runs[0]!
  const alone = indexOf(model.runs[0]!, token)
  let probability = ((alone < 0 ? 0 : counts[alone]!) + 0.1) / (totalOf(model) + 0.1 * model.tokens.length)
  for (let length = 1; length <= keys.length; length++) {
    const at = places[length - 1]!
    const { followers, followed } = model.runs[length - 1]!
    if (at < 0 || followers[at] === 0) continue
    const longer = model.runs[length]!
    const found = indexOf(longer, keys[length - 1]! * tokenSpan + token)
    const count = found < 0 ? 0 : longer.counts[found]!
    probability = (count + followers[at]! * probability) / (followed[at]! + followers[at]!)
  }
  return -Math.log(probability)
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
