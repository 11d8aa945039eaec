/** How many turns a counter takes along a track: an absorbing Markov chain (Kemeny and Snell, Finite Markov Chains, 1960, §3.2). */

/** Spaces are counted from 0, the start; the last one is the finish. */
export interface TrackRules {
  readonly finish: number
  readonly jumps: readonly Jump[]
  /** Of the die or the disc, each side as likely as the others. */
  readonly faces: number
  /** Whether a throw past the finish ends there, or the counter stays until the throw is exact. */
  readonly ending: 'over' | 'exact'
}

/** Whoever comes to `from` goes on at once to `to`, forward or back. */
export interface Jump {
  readonly from: number
  readonly to: number
}

/** What a set of path boards has in common. */
export interface TrackOfSet {
  readonly jumps: readonly Jump[]
  /** From the start to the finish on average, for one counter. */
  readonly turns: number
  readonly ending: TrackRules['ending']
  /** How long a game lasts with the players that it was reckoned for. */
  readonly minutes: number
  /** To put a finger on instead of throwing: each number as often as any other. */
  readonly numbers: readonly (readonly number[])[]
}

/** Where a counter on `space` stands after a throw of `thrown`. */
export function landing(space: number, thrown: number, { finish, jumps, ending }: TrackRules): number {
  const reached = space + thrown
  if (reached > finish) return ending === 'over' ? finish : space
  return jumps.find(({ from }) => from === reached)?.to ?? reached
}

/**
 * Turns from the start to the finish on average. With Q the chances from each space to each other before the finish,
 * the expected turns t solve (I − Q) t = 1. Infinity where a counter may never come to the finish.
 */
export function expectedTurns(rules: TrackRules): number {
  const { finish, faces } = rules
  const equations = Array.from({ length: finish }, (_, space) => {
    const row = Array.from({ length: finish + 1 }, (_, column): number =>
      column === space || column === finish ? 1 : 0,
    )
    for (let thrown = 1; thrown <= faces; thrown++) {
      const next = landing(space, thrown, rules)
      if (next < finish) row[next] = row[next]! - 1 / faces
    }
    return row
  })
  return solve(equations)?.[0] ?? Number.POSITIVE_INFINITY
}

/** Solves the equations, each with its right side last, by elimination with row pivots; undefined where they are singular. */
function solve(equations: readonly (readonly number[])[]): readonly number[] | undefined {
  const rows = equations.map(row => [...row])
  const count = rows.length
  for (let column = 0; column < count; column++) {
    const below = rows.slice(column)
    const largest = Math.max(...below.map(row => Math.abs(row[column]!)))
    if (largest < 1e-12) return undefined
    const pivot = column + below.findIndex(row => Math.abs(row[column]!) === largest)
    const chosen = rows[pivot]!
    rows[pivot] = rows[column]!
    rows[column] = chosen
    for (const [index, row] of rows.entries()) {
      const factor = row[column]! / chosen[column]!
      if (index === column || factor === 0) continue
      for (let at = column; at <= count; at++) row[at] = row[at]! - factor * chosen[at]!
    }
  }
  return rows.map((row, index) => row[count]! / row[index]!)
}
