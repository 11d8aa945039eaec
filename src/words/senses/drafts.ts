/**
 * Drafts of clues: what a teacher may write on a card until she has words of her own.
 *
 * All are written for this project. WordNet's glosses are none, judged by hand: of 150 words taken by chance 14 had one in
 * the sense and the words of a child of seven; of 100 whose first sense is a thing or a person and has nine tenths of the
 * word's uses, told whole in 60 characters of very familiar words, 44.
 */
import { lazily, rowsOf, tablesBeginning } from '../tables/installed-tables.js'

/** By word in lower case. */
export const allDrafts: () => ReadonlyMap<string, string> = lazily(
  () =>
    new Map(
      tablesBeginning('senses/drafts-')
        .flatMap(rowsOf)
        .map(([word = '', draft = '']) => [word, draft]),
    ),
)

/** Capitals do not matter. */
export function draftOf(word: string): string | undefined {
  return allDrafts().get(word.toLowerCase())
}
