/** What a set holds, in words. */
import type { Word } from '../words/word.js'
import type { CardKind, CardSet } from './card-set.js'

/** Those of the words that the set deals out, in their order; all where its pieces hold none, as tiles and mats. */
export function wordsDealt(set: CardSet, words: readonly Word[]): readonly Word[] {
  const dealt = new Set(set.cards.flatMap(card => card.words))
  return dealt.size === 0 ? words : words.filter(word => dealt.has(word))
}

/** `3 headers, 16 cards`, `1 board of 2 sheets`: the pieces of one copy of the set, by kind. */
export function contentsOf(set: CardSet): string {
  const counts = new Map<CardKind, number>()
  for (const { kind, copy, part } of set.cards)
    if (copy === 1 && (part === undefined || part.number === 1)) counts.set(kind, (counts.get(kind) ?? 0) + 1)
  const sheets = set.cards[0]?.part?.of
  const joined = sheets === undefined ? '' : ` of ${sheets} sheets`
  return [...counts].map(([kind, count]) => `${count} ${kind}${count === 1 ? '' : 's'}${joined}`).join(', ')
}
