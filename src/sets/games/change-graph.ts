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
  const keys = rows.map(bucketKeys)
  keys.forEach((ofRow, index) => {
    for (const key of ofRow) {
      const bucket = buckets.get(key)
      if (bucket === undefined) buckets.set(key, [index])
      else bucket.push(index)
    }
  })
  const known = new Map<number, readonly number[]>()
  const find = (index: number): readonly number[] => {
    const row = rows[index]!
    const found: number[] = []
    for (const [place, key] of keys[index]!.entries()) {
      const from = row[place]!
      for (const other of buckets.get(key)!) {
        const to = rows[other]![place]!
        if (from !== to && mayChange(from, to)) found.push(other)
      }
    }
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
  const after: string[] = ['']
  for (let place = row.length - 1; place > 0; place--) after.unshift(`|${row[place]!}${after[0]!}`)
  let before = ''
  return row.map((unit, place) => {
    const key = `${before}*${after[place]!}`
    before += `${unit}|`
    return key
  })
}
