/** Words that fit one wish, as lists for children who read more or less: three lists for one pattern, say. */

/** What makes a word longer to read and spell. */
export interface GradedWord {
  readonly text: string
  readonly soundCount: number
  readonly syllables: readonly string[]
}

/**
 * The words, the most familiar first, in as many lists as are wanted, from the shortest to the longest: no word of a
 * list is shorter than any of the list before, by syllables, then by sounds, then by letters (common practice, no
 * source). Of each part the most familiar `count` are kept.
 */
export function gradedLists<T extends GradedWord>(
  words: readonly T[],
  { lists, count }: { readonly lists: number; readonly count: number },
): readonly (readonly T[])[] {
  const byLength = [...words.keys()].toSorted((a, b) => compareLength(words[a]!, words[b]!) || a - b)
  return Array.from({ length: lists }, (_, list) => {
    const from = Math.round((list * byLength.length) / lists)
    const to = Math.round(((list + 1) * byLength.length) / lists)
    const part = byLength.slice(from, to).toSorted((a, b) => a - b)
    return part.slice(0, count).map(index => words[index]!)
  })
}

function compareLength(one: GradedWord, other: GradedWord): number {
  return (
    one.syllables.length - other.syllables.length ||
    one.soundCount - other.soundCount ||
    one.text.length - other.text.length
  )
}
