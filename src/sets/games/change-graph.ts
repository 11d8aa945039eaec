/**
 * Rows of units (a word's sounds, or its letters), and which row becomes which when one unit is changed for another. Rows
 * that are alike but for one place lie in one bucket, so that no two rows have to be compared that differ in more.
 */

/** Rows by their index. */
export interface ChangeGraph {
  readonly count: number
  /** Those that one change leads to, in the order of the rows. */
  readonly neighbours: (index: number) => readonly number[]
  readonly areNeighbours: (one: number, other: number) => boolean
}

/** @param mayChange whether one unit may be changed for the other; they are never the same */
export function changeGraph(
  rows: readonly (readonly string[])[],
  mayChange: (from: string, to: string) => boolean = () => true,
): ChangeGraph {
  const buckets = new Map<string, number[]>()
  rows.forEach((row, index) => {
    for (const key of bucketKeys(row)) {
      const bucket = buckets.get(key)
      if (bucket === undefined) buckets.set(key, [index])
      else bucket.push(index)
    }
  })
  const known = new Map<number, readonly number[]>()
  const find = (index: number): readonly number[] => {
    const row = rows[index]!
    const found = bucketKeys(row).flatMap((key, place) =>
      buckets.get(key)!.filter(other => {
        const [from, to] = [row[place]!, rows[other]![place]!]
        return from !== to && mayChange(from, to)
      }),
    )
    return found.sort((a, b) => a - b)
  }
  const neighbours = (index: number): readonly number[] => {
    const found = known.get(index) ?? find(index)
    known.set(index, found)
    return found
  }
  return {
    count: rows.length,
    neighbours,
    areNeighbours: (one, other) => neighbours(one).includes(other),
  }
}

/** One for each place: the row with that unit left open. */
function bucketKeys(row: readonly string[]): readonly string[] {
  return row.map((_, place) => row.map((unit, index) => (index === place ? '*' : unit)).join('|'))
}
