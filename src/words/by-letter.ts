/** Beginnings and endings put together by one letter, so that a word is held against few of them. */
export function byLetter<T>(
  items: readonly T[],
  letterOf: (item: T) => string,
): ReadonlyMap<string, readonly T[]> {
  const groups = new Map<string, T[]>()
  for (const item of items) {
    const letter = letterOf(item)
    groups.set(letter, [...(groups.get(letter) ?? []), item])
  }
  return groups
}
