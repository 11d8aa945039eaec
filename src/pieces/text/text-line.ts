import { pathText, scaleCommands } from '../art/path-text.js'
import type { Art } from '../piece.js'
import type { Weight } from '../typeface/shaped-run.js'
import type { Typeface } from '../typeface/typeface.js'

export interface TextLineRequest {
  readonly typeface: Typeface
  readonly text: string
  /** The em. */
  readonly sizeMm: number
  /** `#rrggbb`; black where left out. */
  readonly color?: string
  readonly weight?: Weight
}

/** One line of text as outlines. */
export interface TextLine {
  /** As wide as the text's advance; from the typeface's ascender ink down to its descender ink. */
  readonly art: Art
  /** From the top of `art`. */
  readonly baselineMm: number
}

/**
 * A line of plain text, for labels and lists. Its height is the typeface's, not the text's, so that lines of one size
 * share a baseline. Characters that the typeface lacks leave nothing: ask `typeface.missing` before.
 */
export function drawTextLine(request: TextLineRequest): TextLine {
  const { typeface, text, sizeMm, color = '#000000', weight = 'regular' } = request
  const run = typeface.shape(text, { weight })
  const { ascender, descender } = typeface.metrics
  const baselineMm = ascender * sizeMm
  const widthMm = run.widthEm * sizeMm
  const d = run.glyphs
    .map(({ outline, xEm, yEm }) =>
      pathText(
        scaleCommands(outline.commands, sizeMm, { xMm: xEm * sizeMm, yMm: baselineMm + yEm * sizeMm }),
      ),
    )
    .join('')
  const art: Art = {
    widthMm,
    heightMm: (ascender + descender) * sizeMm,
    shapes: d === '' ? [] : [{ kind: 'path', d, fill: color }],
    text: text === '' ? [] : [{ text, xMm: 0, baselineMm, widthMm, sizeMm }],
  }
  return { art, baselineMm }
}

/** Width in mm of `text` set on one line. */
export function measureTextLine(request: Omit<TextLineRequest, 'color'>): number {
  const { typeface, text, sizeMm, weight = 'regular' } = request
  return typeface.shape(text, { weight }).widthEm * sizeMm
}
