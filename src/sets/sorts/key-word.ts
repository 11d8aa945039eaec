/** The word after which a column is called: `ow as in cow`. */
import type { SortableWord } from '../../words/sortable-word.js'

/** The shortest, the first in the alphabet of several: whatever the order of the list, the same. */
export function keyWordOf(words: readonly SortableWord[]): string {
  const [first, ...others] = words.map(({ text }) => text)
  return others.reduce(
    (best, text) => (text.length < best.length || (text.length === best.length && text < best) ? text : best),
    first ?? '',
  )
}
