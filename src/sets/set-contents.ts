/** What a set holds, in words. */
import type { Word } from '../words/word.js'
import type { Card, CardKind, CardSet } from './card-set.js'

/** Those of the words that the set deals out, in their order; all where its pieces hold none, as tiles and mats. */
export function wordsDealt(set: CardSet, words: readonly Word[]): readonly Word[] {
  const dealt = new Set(set.cards.flatMap(card => card.words))
  return dealt.size === 0 ? words : words.filter(word => dealt.has(word))
}

/** The cards of one copy of the set; of a board that is joined from several sheets the first, which keeps all it has. */
export function firstCopy({ cards }: Pick<CardSet, 'cards'>): readonly Card[] {
  return cards.filter(({ copy, part }) => copy === 1 && (part === undefined || part.number === 1))
}

/** Whether its boards are each joined from several sheets. */
export function isJoined({ cards }: Pick<CardSet, 'cards'>): boolean {
  return cards.some(({ part }) => part !== undefined)
}

/** `3 headers, 16 cards`, `1 board of 2 sheets`: the pieces of one copy of the set, by kind. */
export function contentsOf(set: CardSet): string {
  const counts = new Map<CardKind, number>()
  for (const { kind } of firstCopy(set)) counts.set(kind, (counts.get(kind) ?? 0) + 1)
  const sheets = set.cards[0]?.part?.of
  const joined = sheets === undefined ? '' : ` of ${sheets} sheets`
  return [...counts].map(([kind, count]) => `${count} ${kind}${count === 1 ? '' : 's'}${joined}`).join(', ')
}
