/** Ways through a graph of changes: how far rows are apart, and the way of so many steps that costs least. */
import type { ChangeGraph } from './change-graph.js'

/** Fewest steps to every row that can be reached, at most so many. */
export function stepsFrom(graph: ChangeGraph, from: number, most: number): ReadonlyMap<number, number> {
  const steps = new Map([[from, 0]])
  let edge = [from]
  for (let step = 1; step <= most && edge.length > 0; step++) {
    const next: number[] = []
    for (const index of edge)
      for (const neighbour of graph.neighbours(index)) {
        if (steps.has(neighbour)) continue
        steps.set(neighbour, step)
        next.push(neighbour)
      }
    edge = next
  }
  return steps
}

export interface PathWanted {
  readonly from: number
  readonly isEnd: (index: number) => boolean
  /** How many changes, exactly. */
  readonly steps: number
  readonly cost: (index: number) => number
  /** Whether a row may be one change away from an earlier one than the last, so that a step could be left out. */
  readonly shortcuts: boolean
}

/** Rows tried at most, dead ends among them. */
const MOST_TRIED = 4000

/**
 * A path without a repeat, as cheap as the first that a search finds which knows the cheapest rest of the way from every
 * row (Bellman's equations, 1957): where the cheapest walks repeat nothing, the cheapest of all.
 */
export function cheapestPath(graph: ChangeGraph, wanted: PathWanted): readonly number[] | undefined {
  const { from, isEnd, steps, cost, shortcuts } = wanted
  const rest = cheapestRests(graph, wanted)
  const path = [from]
  let tried = 0
  const leadsOn = (index: number): boolean =>
    !path.includes(index) &&
    (shortcuts || path.slice(0, -1).every(earlier => !graph.areNeighbours(earlier, index)))
  const extend = (): boolean => {
    const left = steps - path.length + 1
    if (left === 0) return isEnd(path.at(-1)!)
    const ways = graph
      .neighbours(path.at(-1)!)
      .filter(index => rest[left - 1]!.has(index) && leadsOn(index))
      .map(index => ({ index, cost: cost(index) + rest[left - 1]!.get(index)! }))
      .sort((a, b) => a.cost - b.cost || a.index - b.index)
    for (const { index } of ways) {
      if (++tried > MOST_TRIED) return false
      path.push(index)
      if (extend()) return true
      path.pop()
    }
    return false
  }
  return rest[steps]!.has(from) && extend() ? path : undefined
}

/** For 0, 1, … steps that are left: what they cost at least, from each row that the path may have come to by then. */
function cheapestRests(
  graph: ChangeGraph,
  { from, isEnd, steps, cost }: PathWanted,
): readonly ReadonlyMap<number, number>[] {
  const reached = stepsFrom(graph, from, steps)
  const ends = [...reached.keys()].filter(index => index !== from && isEnd(index))
  const rests: Map<number, number>[] = [new Map(ends.map(index => [index, 0]))]
  for (let left = 1; left <= steps; left++) {
    const rest = new Map<number, number>()
    for (const [index, after] of rests[left - 1]!) {
      const through = after + cost(index)
      for (const neighbour of graph.neighbours(index)) {
        if ((reached.get(neighbour) ?? Number.POSITIVE_INFINITY) > steps - left) continue
        if (through < (rest.get(neighbour) ?? Number.POSITIVE_INFINITY)) rest.set(neighbour, through)
      }
    }
    rests.push(rest)
  }
  return rests
}
