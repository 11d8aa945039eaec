/** What a set holds, in words. */
import type { CardKind, CardSet } from './card-set.js'

/** `3 headers, 16 cards`: the pieces of one copy of the set, by kind. */
export function contentsOf(set: CardSet): string {
  const counts = new Map<CardKind, number>()
  for (const { kind, copy } of set.cards) if (copy === 1) counts.set(kind, (counts.get(kind) ?? 0) + 1)
  return [...counts].map(([kind, count]) => `${count} ${kind}${count === 1 ? '' : 's'}`).join(', ')
}
