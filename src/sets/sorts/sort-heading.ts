/** What stands over the columns of a sort on paper. */
import type { Word } from '../../words/word.js'
import type { Sort, SortColumn } from './sort.js'

/** What shows the children what a column is for. */
export type HeadedBy = 'title' | 'key word' | 'key picture'

export interface SortHeading {
  /** As the teacher's pages call the column. */
  readonly title: string
  /** The word that stands over the column in place of its title, and is not sorted. */
  readonly keyWord?: Word
  /** The words to sort into it, in the order of the list. */
  readonly words: readonly string[]
}

/** Over the column of the words that fit no other: a sign that needs no reading. */
export const LEFTOVERS_TITLE = '?'

export interface HeadingsWanted {
  readonly sort: Sort
  readonly words: readonly Word[]
  readonly headedBy: HeadedBy
  /** Whether there is a column for words that fit no other. */
  readonly leftovers: boolean
  readonly hasPicture: (word: Word) => boolean
}

/** A heading for each column of the sort, in its order, the one for leftovers last. */
export function sortHeadings({
  sort,
  words,
  headedBy,
  leftovers,
  hasPicture,
}: HeadingsWanted): readonly SortHeading[] {
  const headings = sort.columns.map((column): SortHeading => {
    const keyWord = headedBy === 'title' ? undefined : keyWordOf(column, words, headedBy, hasPicture)
    if (keyWord === undefined) return { title: column.title, words: column.words }
    return { title: column.title, keyWord, words: column.words.filter(word => word !== keyWord.text) }
  })
  return leftovers ? [...headings, { title: LEFTOVERS_TITLE, words: sort.leftovers }] : headings
}

/**
 * The word that shows a column's pattern with the least beside it: the one with the fewest sounds, then letters, then the
 * first of the list; of those with a picture where pictures stand over the columns. None for a column whose words have
 * nothing in common but what they lack: no word shows that.
 */
function keyWordOf(
  column: SortColumn,
  words: readonly Word[],
  headedBy: HeadedBy,
  hasPicture: (word: Word) => boolean,
): Word | undefined {
  if (column.without === true || column.words.length < 2) return undefined
  const own = words.filter(word => column.words.includes(word.text))
  const pictured = headedBy === 'key picture' ? own.filter(hasPicture) : []
  const candidates = pictured.length === 0 ? own : pictured
  return candidates.reduce((best, word) => (isPlainer(word, best) ? word : best))
}

function isPlainer(word: Word, other: Word): boolean {
  return word.soundCount === other.soundCount
    ? word.text.length < other.text.length
    : word.soundCount < other.soundCount
}
