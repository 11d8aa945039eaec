/** A word shaped, opened for its marks, and its marks placed: what its drawing and its measure are both of. */
import { pointsToMm } from '../../geometry.js'
import { type InkRules, inkRulesFor } from '../marks/ink-rules.js'
import { around, type Extent, type LetterInk } from '../marks/letter-ink.js'
import { type DrawnMark, placeMarks } from '../marks/place-marks.js'
import { placeTag, type Tag } from '../marks/place-tag.js'
import type { MarkSpan } from '../marks/styled-mark.js'
import type { ShapedRun } from '../typeface/shaped-run.js'
import type { Typeface } from '../typeface/typeface.js'
import { type Openings, openedFurther, openedRun } from './opened-run.js'
import { openSyllables } from './syllable-breaks.js'
import { inkOfLetters, spaceForPaint } from './word-letters.js'

export interface WordRequest {
  readonly typeface: Typeface
  readonly word: string
  readonly spans: readonly MarkSpan[]
  /** The em. */
  readonly sizeMm: number
  /** Of the letters, and of marks without a colour of their own; black where left out. */
  readonly color?: string
  /** Large print: heavier marks, more space between letters. */
  readonly large?: boolean
  /** What shows through hollow letters; white where left out. */
  readonly paper?: string
  /** No tag may be smaller than this em, unless the word itself is. */
  readonly leastTextMm?: number
  /** Text indices at which a new syllable begins, each to be shown by a raised dot. */
  readonly syllableBreaks?: readonly number[]
}

/** Space added between the letters in large print, in em. */
const largeSpacingEm = 0.04

/** The ink of a word's letters as they stand before marks open it or make them heavier, in em. */
export function inkOfLettersEm(word: Omit<WordRequest, 'sizeMm'>): Extent | undefined {
  const extents = shaped(word).glyphs.flatMap(({ outline: { ink }, xEm, yEm }) =>
    ink === undefined
      ? []
      : [{ left: xEm + ink.left, right: xEm + ink.right, top: yEm + ink.top, bottom: yEm + ink.bottom }],
  )
  return around(extents)
}

/** As one run, with no ligature over the edge of a mark or a syllable. */
function shaped({
  typeface,
  word,
  spans,
  large = false,
  syllableBreaks = [],
}: Omit<WordRequest, 'sizeMm'>): ShapedRun {
  const edges = spans.flatMap(span => span.ranges.flatMap(({ start, end }) => [start, end]))
  const splitLigaturesAt = [...new Set([...edges, ...syllableBreaks])].sort((a, b) => a - b)
  return typeface.shape(word, { letterSpacingEm: large ? largeSpacingEm : 0, splitLigaturesAt })
}

export interface Composition {
  readonly run: ShapedRun
  readonly ink: InkRules
  readonly letters: readonly LetterInk[]
  readonly marks: readonly DrawnMark[]
  readonly tags: readonly (Tag & { readonly color?: string })[]
  readonly breaks: readonly LetterInk[]
  readonly openings: Openings
  readonly widenedEm: number
}

/** Shapes the word and places its marks, opening it at the edges of outlines until they keep off their neighbours. */
export function compose(request: WordRequest): Composition {
  const { typeface, spans, sizeMm, large = false, syllableBreaks = [] } = request
  const ink = inkRulesFor(sizeMm, large)
  const descenderMm = typeface.metrics.descender * sizeMm
  const outlined = spans.flatMap(({ mark, ranges }) => (mark.outline === undefined ? [] : ranges))
  const unopened = shaped(request)
  let openings: Openings = new Map()
  for (let tries = 0; ; tries++) {
    const { run, breaks } = openSyllables(openedRun(unopened, openings), syllableBreaks, {
      ink,
      sizeMm,
      xHeightEm: typeface.metrics.xHeight,
      outlined,
    })
    const letters = inkOfLetters(run, spans, ink, sizeMm)
    const standing = [...letters, ...breaks]
    const { marks, neededMm: forOutlines } = placeMarks({
      letters: standing,
      spans,
      ink,
      sizeMm,
      descenderMm,
    })
    const forPaint = spaceForPaint(run, spans, letters, ink)
    const neededMm = Math.max(0, ...forOutlines.values(), ...forPaint.values())
    if (neededMm <= 0.002 || tries === mostOpenings) {
      const tags = tagsOf(request, letters, marks, ink)
      const widenedEm = [...openings.values()].reduce((sum, em) => sum + em, 0)
      return { run, ink, letters, marks, tags, breaks, openings, widenedEm }
    }
    openings = openedFurther(openings, [forOutlines, forPaint], sizeMm)
  }
}

/** An outline that is moved on by one may come near another; words need two or three rounds. */
const mostOpenings = 12

/** A tag's em, where the word is not smaller still: seven points (our own judgement, no source). */
const leastTagMm = pointsToMm(7)
const tagEm = 0.45

function tagsOf(
  { typeface, sizeMm, leastTextMm = leastTagMm }: WordRequest,
  letters: readonly LetterInk[],
  marks: readonly DrawnMark[],
  ink: InkRules,
): Composition['tags'] {
  const tags: (Tag & { readonly color?: string })[] = []
  for (const beside of marks) {
    const { tag: text, color } = beside.span.mark
    // A whole word's tag stands in the corner of its room (corner-tags.ts).
    if (text === undefined || beside.span.mark.mark.target.kind === 'word') continue
    const tag = placeTag({
      typeface,
      text,
      sizeMm: Math.min(sizeMm, Math.max(tagEm * sizeMm, leastTextMm)),
      beside,
      letters,
      marks: [...marks, ...tags],
      ink,
    })
    if (tag !== undefined) tags.push({ ...tag, ...(color === undefined ? {} : { color }) })
  }
  return tags
}
