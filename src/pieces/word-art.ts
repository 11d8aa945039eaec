import type { Box } from '../geometry.js'
import { inkRulesFor } from './marks/ink-rules.js'
import { around, type Extent, type LetterInk, placeInk } from './marks/letter-ink.js'
import { type DrawnMark, placeMarks } from './marks/place-marks.js'
import type { MarkSpan } from './marks/styled-mark.js'
import { pathText, scaleCommands } from './path-text.js'
import type { Art, PathShape, PlacedMark } from './piece.js'
import type { PathCommand } from './typeface/glyph-outline.js'
import type { ShapedRun } from './typeface/shaped-run.js'
import type { Typeface } from './typeface/typeface.js'

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
}

/** A word with its marks, drawn. All boxes are in the art's own coordinates. */
export interface WordArt {
  /** As large as all its ink, letters and marks. */
  readonly art: Art
  readonly baselineMm: number
  /** Ink of the letters alone: what to centre by. */
  readonly letterBox: Box
  /** Ink of the letters and the marks: the whole art. */
  readonly inkBox: Box
  /** Ink of each mark. */
  readonly marks: readonly PlacedMark[]
  readonly xHeightMm: number
  /** Space added between all letters to make room for outlines, beyond what was asked for, in em; 0 for most words. */
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
  readonly widenedEm: number
}

/** Space added between the letters in large print, in em. */
const largeSpacingEm = 0.04

export function drawWord(request: WordRequest): WordArt {
  const { typeface, word, sizeMm, color = '#000000' } = request
  const { run, letters, marks, widenedEm } = compose(request)
  const ink = around([...letters, ...marks]) ?? { left: 0, right: 0, top: 0, bottom: 0 }
  const origin = { xMm: -ink.left, yMm: -ink.top }
  const boxOf = (extent: Extent): Box => ({
    xMm: extent.left + origin.xMm,
    yMm: extent.top + origin.yMm,
    widthMm: extent.right - extent.left,
    heightMm: extent.bottom - extent.top,
  })
  const glyphs = run.glyphs.map(({ outline, xEm, yEm }) =>
    pathText(
      scaleCommands(outline.commands, sizeMm, {
        xMm: origin.xMm + xEm * sizeMm,
        yMm: origin.yMm + yEm * sizeMm,
      }),
    ),
  )
  const inkBox = boxOf(ink)
  return {
    art: {
      widthMm: inkBox.widthMm,
      heightMm: inkBox.heightMm,
      shapes: [
        ...marks.flatMap(mark => markShapes(mark, origin, color)),
        { kind: 'path', d: glyphs.join(''), fill: color },
      ],
      text: [{ text: word, xMm: origin.xMm, baselineMm: origin.yMm, widthMm: run.widthEm * sizeMm, sizeMm }],
    },
    baselineMm: origin.yMm,
    letterBox: boxOf(around(letters) ?? ink),
    inkBox,
    marks: marks.map(mark => placedMark(word, mark, boxOf(mark))),
    xHeightMm: typeface.metrics.xHeight * sizeMm,
    widenedEm,
    letterInk: letters.map(letter => ({ ...boxOf(letter), start: letter.start, end: letter.end })),
  }
}

export function measureWord(request: WordRequest): WordMeasure {
  const { letters, marks, widenedEm } = compose(request)
  const ink = around([...letters, ...marks])
  if (ink === undefined) return { widthMm: 0, aboveMm: 0, belowMm: 0, widenedEm }
  return {
    widthMm: ink.right - ink.left,
    aboveMm: Math.max(0, -ink.top),
    belowMm: Math.max(0, ink.bottom),
    widenedEm,
  }
}

interface Composition {
  readonly run: ShapedRun
  readonly letters: readonly LetterInk[]
  readonly marks: readonly DrawnMark[]
  readonly widenedEm: number
}

/** Shapes the word and places its marks, opening up the letters until the outlines keep off their neighbours. */
function compose({ typeface, word, spans, sizeMm, large = false }: WordRequest): Composition {
  const splitLigaturesAt = [
    ...new Set(spans.flatMap(span => span.ranges.flatMap(({ start, end }) => [start, end]))),
  ].sort((a, b) => a - b)
  const ink = inkRulesFor(sizeMm, large)
  const asked = large ? largeSpacingEm : 0
  let widenedEm = 0
  for (let tries = 0; ; tries++) {
    const run = typeface.shape(word, { letterSpacingEm: asked + widenedEm, splitLigaturesAt })
    const letters = run.glyphs.flatMap(glyph =>
      glyph.outline.ink === undefined ? [] : [placeInk(glyph.outline.ink, glyph, sizeMm)],
    )
    const descenderMm = typeface.metrics.descender * sizeMm
    const { marks, neededMm } = placeMarks({ letters, spans, ink, sizeMm, descenderMm })
    if (neededMm <= 0.002 || tries === 8) return { run, letters, marks, widenedEm }
    widenedEm += Math.ceil((neededMm / sizeMm) * 1000) / 1000
  }
}

function markShapes(
  mark: DrawnMark,
  origin: { xMm: number; yMm: number },
  inkColor: string,
): readonly PathShape[] {
  const color = mark.span.mark.color ?? inkColor
  const moved = (commands: readonly PathCommand[]): string => pathText(scaleCommands(commands, 1, origin))
  const filled = mark.paths.filter(path => path.strokeMm === undefined)
  const stroked = mark.paths.flatMap(({ commands, strokeMm }): PathShape[] =>
    strokeMm === undefined
      ? []
      : [
          {
            kind: 'path',
            d: moved(commands),
            fill: 'none',
            stroke: { color, widthMm: strokeMm, cap: 'round' },
          },
        ],
  )
  if (filled.length === 0) return stroked
  return [
    { kind: 'path', d: filled.map(({ commands }) => moved(commands)).join(''), fill: color },
    ...stroked,
  ]
}

function placedMark(word: string, { span }: DrawnMark, box: Box): PlacedMark {
  const { ranges, mark } = span
  return {
    ...box,
    word,
    letters: ranges.map(({ start, end }) => word.slice(start, end)).join('_'),
    start: ranges[0].start,
    end: ranges.at(-1)!.end,
    ...(mark.line === undefined ? {} : { line: mark.line }),
    ...(mark.outline === undefined ? {} : { outline: mark.outline }),
    ...(mark.color === undefined ? {} : { color: mark.color }),
  }
}
