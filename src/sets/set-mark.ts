import type { Card, CardSet } from './card-set.js'

/**
 * The words printed small on a piece, unlike those of any other piece of the plan, so that a dropped pile can be
 * sorted: what the set is, which copy where there are several, which number of how many, which sheet of a board.
 * @param shortSetTitle unique among the sets of the plan: `word cards`, `Otters · bingo`
 */
export function setMarkText(
  shortSetTitle: string,
  { number, copy, part }: Pick<Card, 'number' | 'copy' | 'part'>,
  { cards }: Pick<CardSet, 'cards'>,
): string {
  const most = (of: (card: Card) => number) => cards.reduce((found, card) => Math.max(found, of(card)), 0)
  const copies = most(card => card.copy)
  return [
    shortSetTitle,
    ...(copies > 1 ? [copyLetter(copy)] : []),
    `${number} of ${most(card => card.number)}`,
    ...(part === undefined ? [] : [`sheet ${part.number} of ${part.of}`]),
  ].join(' · ')
}

/** `A` for the first copy, `Z` for the twenty-sixth, then `AA`. */
export function copyLetter(copy: number): string {
  const [before, last] = [Math.floor((copy - 1) / 26), (copy - 1) % 26]
  return `${before === 0 ? '' : copyLetter(before)}${String.fromCharCode(65 + last)}`
}
