/** A way of telling words apart: a name, and the column in which a word would stand. */
import type { WordFeature } from '../../plan/plan.js'
import type { SortableFinding, SortableWord } from '../../words/sortable-word.js'
import type { Grapheme } from '../../words/word.js'
import type { SortKind } from './weights.js'

/** Where a word stands in one of a family's bases. */
export interface Placement {
  /** Which basis of the family: the pattern, the sound, the letters. */
  readonly of: string
  /** The column, by its key: what no other column of the basis has. */
  readonly column: string
  /** The letters that put it there, where it is letters: from the index of the first to the index after the last. */
  readonly start?: number
  readonly end?: number
}

/** Bases that differ in one thing only: which consonant digraph, which vowel team, and so on for every pattern. */
export interface BasisFamily {
  readonly kind: SortKind
  /** All places of a word; one basis twice, and the word is left over as fitting two columns. Asked once a word. */
  readonly placesOf: (word: SortableWord) => readonly Placement[]
  /** The basis behind `Placement.of`; asked for those that divide the words. */
  readonly basisOf: (of: string) => SortBasis
}

export interface SortBasis {
  readonly name: string
  /** What the columns differ by, as the end of a sentence that begins "The words differ in". */
  readonly basis: string
  /** Patterns that it is about: a plan that marks one of them teaches it. */
  readonly patterns: readonly string[]
  /** What a plan may mark of whole words, where it is about that. */
  readonly feature?: WordFeature
  /** A column's title; the key where it is left out. */
  readonly titleOf?: (column: string, words: readonly SortableWord[], all: ReadonlySet<string>) => string
  /** Why a word without a place has none, in one reason, as `has no consonant digraph`. */
  readonly noneBecause: (word: SortableWord) => string
  /** Why a word without a place is an exception to the rule rather than an outsider: `its ai is said /EH/`. */
  readonly oddball?: (word: SortableWord, columns: ReadonlySet<string>) => string | undefined
  /** A word that stands alone in its column is an exception too: the ey of they among spellings of long a. */
  readonly loneIsOddball?: true
  /** The columns' order, by keys, where they have one of their own; else the alphabet's. */
  readonly order?: readonly string[]
  /** Gives the words without a place a column of their own with this title, where there are three or more. */
  readonly noneTitle?: string
}

/** Where the letters of a grapheme stand. */
export function spanOf({ start, letters }: Grapheme): Required<Pick<Placement, 'start' | 'end'>> {
  return { start, end: start + letters.length }
}

/** Each value once, in order of first appearance. */
export function distinct<T>(values: readonly T[]): readonly T[] {
  return values.length < 2 ? values : [...new Set(values)]
}

export function findingsOf(word: SortableWord, pattern: string): readonly SortableFinding[] {
  return word.patterns.filter(finding => finding.pattern === pattern)
}

export function firstFinding(word: SortableWord, pattern: string): SortableFinding | undefined {
  return word.patterns.find(finding => finding.pattern === pattern)
}
