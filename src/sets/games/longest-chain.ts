/** An order of as many things as can follow one another. */
import { type Generator, shuffle } from '../random.js'

export interface LongestChain {
  /** Indices, in the order in which they follow. */
  readonly order: readonly number[]
  /** Whether the first may follow the last. */
  readonly closed: boolean
}

/** Steps of the search in all; under it every order of a short list is tried. */
const MOST_STEPS = 150_000

/**
 * The longest simple path in the graph of what may follow what, one that closes before one that does not. To find it is
 * NP-hard (Garey and Johnson, Computers and Intractability, 1979, ND29): the search goes first where fewest ways go on
 * (Warnsdorff's rule, 1823) and stops after a set number of steps, from each beginning as many.
 * @param follows whether the second may stand right after the first, by index
 */
export function longestChain(
  count: number,
  follows: (from: number, to: number) => boolean,
  generator: Generator,
): LongestChain {
  const all = Array.from({ length: count }, (_, index) => index)
  const next = all.map(from => all.filter(to => to !== from && follows(from, to)))
  const used = new Set<number>()
  const path: number[] = []
  let best: LongestChain = { order: [], closed: false }
  let steps = 0
  let mostSteps = 0
  const isDone = () => best.closed && best.order.length === count
  const extend = (from: number): void => {
    steps++
    used.add(from)
    path.push(from)
    const closed = path.length > 2 && next[from]!.includes(path[0]!)
    const isLonger = path.length > best.order.length
    if (isLonger || (path.length === best.order.length && closed && !best.closed))
      best = { order: [...path], closed }
    const waysOn = (index: number) => next[index]!.filter(to => !used.has(to)).length
    const ways = next[from]!.filter(to => !used.has(to)).map(to => ({ to, on: waysOn(to) }))
    for (const { to } of ways.toSorted((a, b) => a.on - b.on)) {
      if (steps >= mostSteps || isDone()) break
      extend(to)
    }
    path.pop()
    used.delete(from)
  }
  const beginnings = shuffle(all, generator)
  for (const [index, beginning] of beginnings.entries()) {
    if (isDone()) break
    mostSteps = Math.ceil((MOST_STEPS * (index + 1)) / count)
    extend(beginning)
  }
  return best
}
