/** What the marks of a word are placed from, and the parts that they are placed in. */
import type { InkRules } from './ink-rules.js'
import type { Extent, LetterInk } from './letter-ink.js'
import type { MarkPath } from './line-style.js'
import type { LetterRange, MarkSpan } from './styled-mark.js'

export interface MarkRequest {
  /** In reading order. */
  readonly letters: readonly LetterInk[]
  readonly spans: readonly MarkSpan[]
  readonly ink: InkRules
  readonly sizeMm: number
  readonly descenderMm: number
}

/** With what holds for the whole word. */
export interface WordOfMarks extends MarkRequest {
  /** Of the lines on it: a line that hangs below its neighbour leaves room for the tallest on the neighbour's level. */
  readonly tallestMm: number
}

/** One line or outline on one run of letters; a mark may have both, a split pattern has each twice. */
export interface Part {
  readonly span: MarkSpan
  readonly range: LetterRange
  readonly kind: 'line' | 'outline'
  /** Letters from the first to the last of the span: shorter spans are placed first, nearer to the letters. */
  readonly reach: number
}

/** What has been placed for a span: a part of its mark, or the link between its ends. */
export interface Placed extends Extent, LetterRange {
  readonly span: MarkSpan
  readonly kind: Part['kind'] | 'link'
  readonly paths: readonly MarkPath[]
}

export function lettersWithin(
  letters: readonly LetterInk[],
  { start, end }: LetterRange,
): readonly LetterInk[] {
  return letters.filter(letter => letter.start < end && letter.end > start)
}
