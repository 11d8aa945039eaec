/**
 * Gives again what was made for the same key of late: at most twice `most` things are held, and those that nobody asked
 * for go first. What a week's set needs stays; a set of thousands of words does not pile up.
 */
export function keptOfLate<K, V>(most: number): (key: K, make: () => V) => V {
  let late = new Map<K, V>()
  let earlier = new Map<K, V>()
  return (key, make) => {
    if (late.has(key)) return late.get(key)!
    const value = earlier.has(key) ? earlier.get(key)! : make()
    if (late.size >= most) {
      earlier = late
      late = new Map()
    }
    late.set(key, value)
    return value
  }
}
