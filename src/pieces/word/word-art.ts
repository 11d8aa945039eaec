import type { Box } from '../../geometry.js'
import { pathTextAt } from '../art/path-text.js'
import { around, type Extent } from '../marks/letter-ink.js'
import type { MarkPath } from '../marks/line-style.js'
import type { DrawnMark } from '../marks/place-marks.js'
import { soundMarkColor } from '../marks/sound-marks.js'
import type { Art, PathShape, PlacedMark } from '../piece.js'
import type { PathCommand } from '../typeface/glyph-outline.js'
import { compose, inkOfLettersEm, type WordRequest } from './compose-word.js'
import type { Openings } from './opened-run.js'
import { dotOf } from './syllable-breaks.js'
import { drawLetters } from './word-letters.js'

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

function reachOf(ink: Extent | undefined): { readonly aboveMm: number; readonly belowMm: number } {
  return { aboveMm: Math.max(0, -(ink?.top ?? 0)), belowMm: Math.max(0, ink?.bottom ?? 0) }
}

/** Sound marks are lighter than black; on another ground they are as its letters. */
function colorOf({ span: { mark } }: DrawnMark, color: string): string {
  if (mark.level === 'even' && color === '#000000') return soundMarkColor
  return mark.color ?? color
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
