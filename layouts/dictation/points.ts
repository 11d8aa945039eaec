/** What a word spelled from dictation counts: the pattern right and the word wrong is worth something too. */

import { targetsOf } from '../../src/pieces/marks/find-targets.js'
import { keyEntries } from '../../src/pieces/marks/key-entries.js'
import type { StyledMark } from '../../src/pieces/marks/styled-mark.js'
import type { Word } from '../../src/words/word.js'
import type { LayoutRequest } from '../layout.js'

/** A pattern that the plan marks and the words show. */
export interface CountedPattern {
  /** As the key calls it. */
  readonly label: string
  readonly mark: StyledMark
  /** How many places of the words show it: a point each. */
  readonly places: number
}

/** A place of a word that counts by itself: `th` of thread. */
export interface CountedPlace {
  readonly letters: string
  readonly label: string
}

type Counting = Pick<LayoutRequest, 'words' | 'marks'>

/** In the order of the key; marks of whole words are no spelling. */
export function countedPatterns({ words, marks }: Counting): readonly CountedPattern[] {
  return keyEntries(words, marks)
    .filter(({ mark }) => mark.mark.target.kind !== 'word')
    .map(({ label, mark }) => ({
      label,
      mark,
      places: words.reduce((sum, word) => sum + lettersShowing(word, mark).length, 0),
    }))
}

/** Places of a word, in the order of the key. */
export function countedPlaces(word: Word, patterns: readonly CountedPattern[]): readonly CountedPlace[] {
  return patterns.flatMap(({ label, mark }) =>
    lettersShowing(word, mark).map(letters => ({ letters, label })),
  )
}

/** A point for each place, and one for the whole word. */
export function pointsOf(word: Word, patterns: readonly CountedPattern[]): number {
  return countedPlaces(word, patterns).length + 1
}

/** The letters of each place, a split pattern with its gap: `a_e`. */
function lettersShowing(word: Word, mark: StyledMark): readonly string[] {
  return targetsOf(word, [mark]).map(({ ranges, team = ranges }) =>
    team.map(({ start, end }) => word.text.slice(start, end)).join('_'),
  )
}
