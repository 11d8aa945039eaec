import type { Place } from '../../problems.js'

export interface Repetition<T> {
  readonly item: T
  /** Where both stand, to follow what is said of them: `, on line 3 and on line 7` or `, on line 3`; empty for words that were typed. */
  readonly lines: string
  /** The first of them. */
  readonly earlier: T
}

/** Every item that was there before, in order; items are the same when their identities are. */
export function repetitions<T extends { readonly place: Place }>(
  items: readonly T[],
  identity: (item: T) => string,
): readonly Repetition<T>[] {
  const first = new Map<string, T>()
  return items.flatMap(item => {
    const earlier = first.get(identity(item))
    if (earlier) return [{ item, earlier, lines: bothLines(earlier.place, item.place) }]
    first.set(identity(item), item)
    return []
  })
}

function bothLines(a: Place, b: Place): string {
  if (a.line === undefined || b.line === undefined) return ''
  return a.line === b.line ? `, on line ${a.line}` : `, on line ${a.line} and on line ${b.line}`
}
