/** A way of telling words apart: a name, and the columns in which a word would stand. */
import type { Finding, Word } from '../../words/word.js'

export interface SortBasis {
  readonly name: string
  /** What the columns differ by, as the end of a sentence that begins "The words differ in". */
  readonly basis: string
  /** How clear a contrast children see and hear, 0 to 1: our own judgement, no source. */
  readonly sharpness: number
  /** The titles of the columns that the word fits; none, or more than one, leaves it over. */
  readonly titlesFor: (word: Word) => readonly string[]
  /** Why a word fits no column, the one reason, as `has no consonant digraph`. */
  readonly noneBecause: (word: Word) => string
  /** The columns' order, where they have one of their own; otherwise as the list first shows them. */
  readonly order?: readonly string[]
  /** Gives the words that fit no column one of their own with this title, where there are three or more. */
  readonly noneTitle?: string
}

/** The bases that a list of words suggests; each family of bases is one such function. */
export type BasisFamily = (words: readonly Word[]) => readonly SortBasis[]

/** Each value once, in order of first appearance. */
export function distinct<T>(values: readonly T[]): readonly T[] {
  return [...new Set(values)]
}

export function findingsOf(word: Word, pattern: string): readonly Finding[] {
  return word.patterns.filter(finding => finding.pattern === pattern)
}

/** Every pattern that the words show, in order of first appearance. */
export function patternsIn(words: readonly Word[]): readonly string[] {
  return distinct(words.flatMap(word => word.patterns.map(finding => finding.pattern)))
}
