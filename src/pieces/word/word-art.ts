import { type Box, pointsToMm } from '../../geometry.js'
import { pathTextAt } from '../art/path-text.js'
import { type InkRules, inkRulesFor } from '../marks/ink-rules.js'
import { around, type Extent, type LetterInk } from '../marks/letter-ink.js'
import type { MarkPath } from '../marks/line-style.js'
import { type DrawnMark, placeMarks } from '../marks/place-marks.js'
import { placeTag, type Tag } from '../marks/place-tag.js'
import { soundMarkColor } from '../marks/sound-marks.js'
import type { MarkSpan } from '../marks/styled-mark.js'
import type { Art, PathShape, PlacedMark } from '../piece.js'
import type { PathCommand } from '../typeface/glyph-outline.js'
import type { ShapedRun } from '../typeface/shaped-run.js'
import type { Typeface } from '../typeface/typeface.js'
import { type Openings, openedFurther, openedRun } from './opened-run.js'
import { dotOf, openSyllables } from './syllable-breaks.js'
import { drawLetters, inkOfLetters, spaceForPaint } from './word-letters.js'

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

/** A word with its marks, drawn. All boxes are in the art's own coordinates. */
export interface WordArt {
  /** As large as all its ink, letters and marks. */
  readonly art: Art
  readonly baselineMm: number
  /** Ink of the letters alone: what to centre by. */
  readonly letterBox: Box
  /** Ink of the letters and the marks, those too that are not drawn yet: the whole art. */
  readonly inkBox: Box
  /** Ink of each mark. */
  readonly marks: readonly PlacedMark[]
  readonly xHeightMm: number
  /** Space added at the edges of outlines, in em: at each its own, and in all. */
  readonly openings: Openings
  readonly widenedEm: number
  /** Ink of each letter, or of a ligature's letters together. */
  readonly letterInk: readonly (Box & { readonly start: number; readonly end: number })[]
}

/** How much room a word with its marks takes, in mm. */
export interface WordMeasure {
  readonly widthMm: number
  /** Ink above the baseline. */
  readonly aboveMm: number
  /** Ink below the baseline. */
  readonly belowMm: number
  /** Of these, the ink of the letters alone. */
  readonly letters: { readonly aboveMm: number; readonly belowMm: number }
  readonly widenedEm: number
}

/** Space added between the letters in large print, in em. */
const largeSpacingEm = 0.04

export function drawWord(request: WordRequest): WordArt {
  const { typeface, word, spans, sizeMm, color = '#000000', paper = '#ffffff' } = request
  const { run, ink: inkRules, letters, marks, tags, breaks, openings, widenedEm } = compose(request)
  const ink = around([...letters, ...marks, ...tags]) ?? { left: 0, right: 0, top: 0, bottom: 0 }
  const origin = { xMm: -ink.left, yMm: -ink.top }
  const seen = marks.filter(({ span }) => span.unseen !== true)
  const boxOf = (extent: Extent): Box => ({
    xMm: extent.left + origin.xMm,
    yMm: extent.top + origin.yMm,
    widthMm: extent.right - extent.left,
    heightMm: extent.bottom - extent.top,
  })
  const inkBox = boxOf(ink)
  return {
    art: {
      widthMm: inkBox.widthMm,
      heightMm: inkBox.heightMm,
      shapes: [
        ...seen.flatMap(mark => pathShapes(mark.paths, colorOf(mark, color), origin)),
        ...tags.flatMap(tag => pathShapes(tag.paths, tag.color ?? color, origin)),
        ...breaks.flatMap(dot => pathShapes([{ commands: dotOf(dot) }], color, origin)),
        ...drawLetters({ run, spans, ink: inkRules, sizeMm, origin, color, paper }),
      ],
      text: [{ text: word, xMm: origin.xMm, baselineMm: origin.yMm, widthMm: run.widthEm * sizeMm, sizeMm }],
    },
    baselineMm: origin.yMm,
    letterBox: boxOf(around(letters) ?? ink),
    inkBox,
    marks: seen.map(mark => placedMark(word, mark, boxOf(mark))),
    xHeightMm: typeface.metrics.xHeight * sizeMm,
    openings,
    widenedEm,
    letterInk: letters.map(letter => ({ ...boxOf(letter), start: letter.start, end: letter.end })),
  }
}

export function measureWord(request: WordRequest): WordMeasure {
  const { spans, syllableBreaks = [] } = request
  if (spans.length === 0 && syllableBreaks.length === 0) return measureLetters(request)
  const { letters, marks, tags, widenedEm } = compose(request)
  const ink = around([...letters, ...marks, ...tags])
  const ofLetters = reachOf(around(letters))
  if (ink === undefined) return { widthMm: 0, ...ofLetters, letters: ofLetters, widenedEm }
  return { widthMm: ink.right - ink.left, ...reachOf(ink), letters: ofLetters, widenedEm }
}

/** Of a word without marks, which is as large as its letters. */
function measureLetters(request: WordRequest): WordMeasure {
  const { sizeMm } = request
  const em = inkOfLettersEm(request)
  const ink = em && {
    left: em.left * sizeMm,
    right: em.right * sizeMm,
    top: em.top * sizeMm,
    bottom: em.bottom * sizeMm,
  }
  const reach = reachOf(ink)
  return { widthMm: ink === undefined ? 0 : ink.right - ink.left, ...reach, letters: reach, widenedEm: 0 }
}

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

function reachOf(ink: Extent | undefined): { readonly aboveMm: number; readonly belowMm: number } {
  return { aboveMm: Math.max(0, -(ink?.top ?? 0)), belowMm: Math.max(0, ink?.bottom ?? 0) }
}

interface Composition {
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
function compose(request: WordRequest): Composition {
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

/** Sound marks are lighter than black; on another ground they are as its letters. */
function colorOf({ span: { mark } }: DrawnMark, color: string): string {
  if (mark.level === 'even' && color === '#000000') return soundMarkColor
  return mark.color ?? color
}

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

function pathShapes(
  paths: readonly MarkPath[],
  color: string,
  origin: { readonly xMm: number; readonly yMm: number },
): readonly PathShape[] {
  const moved = (commands: readonly PathCommand[]): string => pathTextAt(commands, 1, origin)
  const filled = paths.filter(path => path.strokeMm === undefined)
  const stroked = paths.flatMap(({ commands, strokeMm, square }): PathShape[] =>
    strokeMm === undefined
      ? []
      : [
          {
            kind: 'path',
            d: moved(commands),
            fill: 'none',
            stroke: { color, widthMm: strokeMm, cap: square === true ? 'butt' : 'round' },
          },
        ],
  )
  if (filled.length === 0) return stroked
  return [
    { kind: 'path', d: filled.map(({ commands }) => moved(commands)).join(''), fill: color },
    ...stroked,
  ]
}

export function placedMark(word: string, { span }: Pick<DrawnMark, 'span'>, box: Box): PlacedMark {
  const { ranges, mark } = span
  return {
    ...box,
    word,
    letters: ranges.map(({ start, end }) => word.slice(start, end)).join('_'),
    start: ranges[0].start,
    end: ranges.at(-1)!.end,
    ...(mark.line === undefined ? {} : { line: mark.line }),
    ...(mark.outline === undefined ? {} : { outline: mark.outline }),
    ...(mark.tag === undefined ? {} : { tag: mark.tag }),
    ...(mark.color === undefined ? {} : { color: mark.color }),
  }
}
