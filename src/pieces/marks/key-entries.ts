import { plainName } from '../../words/patterns/plain-name.js'
import type { Word } from '../../words/word.js'
import { targetsOf } from './find-targets.js'
import type { StyledMark } from './styled-mark.js'

/** A line of the key: a mark that the set uses. */
export interface KeyEntry {
  readonly mark: StyledMark
  /** The teacher's words for it, else the pattern's name or the letters. */
  readonly label: string
  /** Letters to show it on, e.g. `sh` or `a_e`: the ones that these words have most often. */
  readonly letters: string
  /** Words of the set that show it, in set order. */
  readonly examples: readonly string[]
}

/** Only the marks that these words use, in the order of the plan. */
export function keyEntries(words: readonly Word[], marks: readonly StyledMark[]): readonly KeyEntry[] {
  return marks.flatMap(mark => {
    const shown = words.flatMap(word =>
      targetsOf(word, [mark]).map(({ ranges }) => ({
        word: word.text,
        letters: ranges.map(({ start, end }) => word.text.slice(start, end).toLowerCase()).join('_'),
      })),
    )
    if (shown.length === 0) return []
    const examples = [...new Set(shown.map(({ word }) => word))]
    return [{ mark, label: labelOf(mark), letters: commonest(shown.map(({ letters }) => letters)), examples }]
  })
}

function labelOf({ mark: { label, target } }: StyledMark): string {
  return label ?? (target.kind === 'pattern' ? plainName(target.pattern) : target.letters)
}

/** The value that comes most often; of several, the one that comes first. */
export function commonest(values: readonly string[]): string {
  const counts = new Map<string, number>()
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1)
  return [...counts].reduce((best, entry) => (entry[1] > best[1] ? entry : best))[0]
}
