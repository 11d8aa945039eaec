/** Warnings where two straight lines stand under the very same letters: the eye takes them for one line of more strokes. */
import { type Problem, warningAt } from '../../problems.js'
import type { Word } from '../../words/word.js'
import { targetsOf } from './find-targets.js'
import { markName } from './mark-problems.js'
import { named } from './missed-words.js'
import type { MarkSpan, StyledMark } from './styled-mark.js'

/**
 * Unbroken straight lines. Stacked lines keep more white between them than any line has inside it, so that each can be
 * told; a line of another kind, or an outline, is told at once (our own judgement by eye, no source).
 */
const straight: readonly string[] = ['single', 'double', 'thick']

/** @param words all of the plan, the class's and its groups' */
export function stackedLines(words: readonly Word[], marks: readonly StyledMark[]): readonly Problem[] {
  const lines = marks.filter(mark => straight.includes(mark.line ?? ''))
  return lines.flatMap((mark, index) =>
    lines.slice(0, index).flatMap(other => {
      const stacked = words.filter(word => standOnSameLetters(word, mark, other)).map(({ text }) => text)
      return stacked.length === 0 ? [] : [readAsOne(mark, other, [...new Set(stacked)])]
    }),
  )
}

function standOnSameLetters(word: Word, mark: StyledMark, other: StyledMark): boolean {
  const places = new Set(targetsOf(word, [other]).map(nameOf))
  return targetsOf(word, [mark]).some(span => places.has(nameOf(span)))
}

function nameOf({ ranges }: MarkSpan): string {
  return ranges.map(({ start, end }) => `${start}-${end}`).join(' ')
}

function readAsOne(mark: StyledMark, other: StyledMark, words: readonly string[]): Problem {
  return warningAt(
    mark.mark.place,
    `the lines of ${markName(other)} and ${markName(mark)} stand under the same letters and may be read as one: ${named(words)}`,
    'Give one of the two an outline, or a line that is not straight, such as wavy or dotted.',
  )
}
