import { childSentence } from '../../words/patterns/child-sentences.js'
import { plainName } from '../../words/patterns/plain-name.js'
import type { Word } from '../../words/word.js'
import { targetsOf } from './find-targets.js'
import type { StyledMark } from './styled-mark.js'
import { featureName, featureSentence } from './word-features.js'

/** A line of the key: a mark that the set uses. */
export interface KeyEntry {
  readonly mark: StyledMark
  /** The teacher's words for it, else the pattern's name or the letters. */
  readonly label: string
  /** What it is in words for a child; left out where there is no more to say than the label does. */
  readonly says?: string
  /** Letters to show it on, e.g. `sh` or `a_e`: those that these words have most often and no other mark stands on. */
  readonly letters: string
  /** Words of the set that show it, in set order. */
  readonly examples: readonly string[]
}

/** Where a mark stands in the words: the letters of each place, in set order. */
interface MarkShown {
  readonly mark: StyledMark
  readonly letters: readonly string[]
  readonly examples: readonly string[]
}

/** Only the marks that these words use, in the order of the plan. */
export function keyEntries(words: readonly Word[], marks: readonly StyledMark[]): readonly KeyEntry[] {
  const shown = marks.map(mark => markShown(words, mark)).filter(({ letters }) => letters.length > 0)
  const taken = new Set<string>()
  return shown.map((own, index): KeyEntry => {
    const others = new Set(shown.filter((_, other) => other !== index).flatMap(({ letters }) => letters))
    const letters = sampleLetters(own.letters, others, taken)
    taken.add(letters)
    const label = labelOf(own.mark)
    const says = sentenceOf(own.mark)
    const { mark, examples } = own
    return { mark, label, ...(says === undefined || says === label ? {} : { says }), letters, examples }
  })
}

function markShown(words: readonly Word[], mark: StyledMark): MarkShown {
  const shown = words.flatMap(word =>
    targetsOf(word, [mark]).map(({ ranges, team = ranges }) => ({
      word: word.text,
      letters: team.map(({ start, end }) => word.text.slice(start, end).toLowerCase()).join('_'),
    })),
  )
  return {
    mark,
    letters: shown.map(({ letters }) => letters),
    examples: [...new Set(shown.map(({ word }) => word))],
  }
}

/** Those that come most often, of the letters that stand under no other mark; else of those that no other sample has. */
function sampleLetters(
  letters: readonly string[],
  others: ReadonlySet<string>,
  taken: ReadonlySet<string>,
): string {
  const alone = letters.filter(each => !others.has(each))
  const free = letters.filter(each => !taken.has(each))
  return commonest(alone.length > 0 ? alone : free.length > 0 ? free : letters)
}

function labelOf({ mark: { label, target } }: StyledMark): string {
  if (label !== undefined) return label
  switch (target.kind) {
    case 'pattern':
      return plainName(target.pattern)
    case 'letters':
      return target.letters
    case 'word':
      return featureName(target)
  }
}

/** Exact letters are named by themselves. */
function sentenceOf({ mark: { target } }: StyledMark): string | undefined {
  switch (target.kind) {
    case 'pattern':
      return childSentence(target.pattern)
    case 'letters':
      return undefined
    case 'word':
      return featureSentence(target)
  }
}

/** The value that comes most often; of several, the one that comes first. */
export function commonest(values: readonly string[]): string {
  const counts = new Map<string, number>()
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1)
  return [...counts].reduce((best, entry) => (entry[1] > best[1] ? entry : best))[0]
}
