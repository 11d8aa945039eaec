import type { Size } from '../../geometry.js'
import { drawnWhenAsked } from '../art/drawn-when-asked.js'
import { lineOfWords } from '../art/line-of-words.js'
import type { Art, TextRun } from '../piece.js'
import type { Weight } from '../typeface/shaped-run.js'
import type { Typeface } from '../typeface/typeface.js'
import { drawWords, lineOutline } from './words-of-line.js'

export interface TextLineRequest {
  readonly typeface: Typeface
  readonly text: string
  /** The em. */
  readonly sizeMm: number
  /** `#rrggbb`; black where left out. */
  readonly color?: string
  readonly weight?: Weight
}

/** One line of text as outlines, which are drawn when somebody asks for them. */
export interface TextLine {
  /** As wide as the text's advance; from the typeface's ascender ink down to its descender ink. */
  readonly art: Art
  /** From the top of `art`. */
  readonly baselineMm: number
}

/** A line before it is drawn: where its text will stand in its art. */
export interface LaidTextLine extends Size {
  readonly text: readonly TextRun[]
  /** From the top of its art. */
  readonly baselineMm: number
}

/**
 * A line of plain text, for labels and lists. Its height is the typeface's, not the text's, so that lines of one size
 * share a baseline. Characters that the typeface lacks leave nothing: ask `typeface.missing` before.
 */
export function drawTextLine(request: TextLineRequest): TextLine {
  const { baselineMm, ...laid } = layTextLine(request)
  return {
    art: drawnWhenAsked(laid, () => textLineShapes(request, { xMm: 0, baselineMm })),
    baselineMm,
  }
}

/** The outlines of a line whose baseline begins there; none where it has no ink. */
export function textLineShapes(
  request: TextLineRequest,
  { xMm, baselineMm }: Pick<TextRun, 'xMm' | 'baselineMm'>,
): Art['shapes'] {
  const line = { ...request, xMm, baselineMm }
  const words = drawWords(line)
  return words.length === 0 ? [] : [lineOfWords(words, () => lineOutline(line))]
}

/** The same without its outlines. */
export function layTextLine(request: Omit<TextLineRequest, 'color'>): LaidTextLine {
  const { typeface, text, sizeMm } = request
  const { ascender, descender } = typeface.metrics
  const baselineMm = ascender * sizeMm
  const widthMm = measureTextLine(request)
  return {
    widthMm,
    heightMm: (ascender + descender) * sizeMm,
    text: text === '' ? [] : [{ text, xMm: 0, baselineMm, widthMm, sizeMm }],
    baselineMm,
  }
}

/** Width in mm of `text` set on one line. */
export function measureTextLine({ typeface, text, weight, sizeMm }: Omit<TextLineRequest, 'color'>): number {
  return typeface.widthEm(text, weight) * sizeMm
}
