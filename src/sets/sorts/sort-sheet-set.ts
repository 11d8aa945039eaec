/** The same sheet of columns for every child. */
import type { Word } from '../../words/word.js'
import { cardId } from '../card-id.js'
import type { CardSet } from '../card-set.js'
import type { SortHeading } from './sort-heading.js'

/** A board for each copy, with the words that belong on it. */
export function sortSheetSet(
  headings: readonly SortHeading[],
  words: readonly Word[],
  copies: number,
): CardSet {
  const sorted = new Set(headings.flatMap(heading => heading.words))
  const own = words.filter(({ text }) => sorted.has(text))
  return {
    cards: Array.from({ length: copies }, (_, index) => ({
      id: cardId({ prefix: 'board', number: 1, copy: index + 1, of: 1 }),
      kind: 'board',
      number: 1,
      copy: index + 1,
      words: own,
    })),
  }
}
