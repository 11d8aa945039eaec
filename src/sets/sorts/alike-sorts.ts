/** Sorts of which a class needs one alone. */
import type { RatedSort } from './sort-by.js'

/** A sort by having a pattern or not adds nothing to a better one in which the words that have it are a column. */
export function addsNothing(rated: RatedSort, better: RatedSort): boolean {
  if (dividesAlike(rated, better)) return true
  const { columns } = rated.sort
  if (!columns.some(column => column.without)) return false
  const others = better.sort.columns.map(column => new Set(column.words))
  return columns
    .filter(column => !column.without)
    .every(column =>
      others.some(other => {
        const shared = column.words.filter(word => other.has(word)).length
        return column.words.length + other.size - 2 * shared <= 1
      }),
    )
}

/** Two sorts are one and the same for a class when at most one word would lie in another column. */
function dividesAlike(a: RatedSort, b: RatedSort): boolean {
  const columns = a.sort.columns.length
  if (columns !== b.sort.columns.length) return false
  const overlaps = new Int32Array(columns * columns)
  let [inA, inB] = [0, 0]
  for (const [index, first] of a.columnOf.entries()) {
    const second = b.columnOf[index]!
    if (first >= 0) inA += 1
    if (second >= 0) inB += 1
    if (first >= 0 && second >= 0) overlaps[first * columns + second]! += 1
  }
  let shared = 0
  for (let column = 0; column < columns; column++)
    shared += Math.max(...overlaps.subarray(column * columns, (column + 1) * columns))
  return Math.max(inA, inB) - shared <= 1
}
