import type { Size } from '../../geometry.js'
import { moveArt } from '../art/move-art.js'
import type { Art } from '../piece.js'
import type { Typeface } from '../typeface/typeface.js'
import { drawWord, type WordArt } from '../word/word-art.js'
import type { MarkSpan, StyledMark } from './styled-mark.js'

export interface KeySampleRequest {
  readonly typeface: Typeface
  readonly mark: StyledMark
  /** The letters to show it on, e.g. `sh`; `a_e` for a split pattern. */
  readonly letters: string
  /** The em; smaller where the room asks for it. */
  readonly sizeMm: number
  /** The sample stands in its middle, at its left edge. */
  readonly room: Size
  readonly color?: string
  readonly large?: boolean
  /** No tag may be smaller. */
  readonly leastTextMm?: number
}

/** The mark on sample letters, as large as `room`. */
export function drawKeySample(request: KeySampleRequest): Art {
  const { room } = request
  let sample = drawSample(request, request.sizeMm)
  const fit = Math.min(room.widthMm / sample.art.widthMm, room.heightMm / sample.art.heightMm)
  // Strokes have a least width, so a smaller sample is drawn anew; the margin covers what does not shrink with it.
  if (fit < 1) sample = drawSample(request, request.sizeMm * fit * 0.95)
  const top = (room.heightMm - sample.art.heightMm) / 2
  return moveArt(sample.art, 0, top, room)
}

function drawSample(request: KeySampleRequest, sizeMm: number): WordArt {
  const { typeface, mark, letters, color, large, leastTextMm } = request
  const { word, ranges } = sampleOf(letters, typeface)
  return drawWord({
    typeface,
    word,
    spans: [{ mark, ranges }],
    sizeMm,
    ...(color === undefined ? {} : { color }),
    ...(large === undefined ? {} : { large }),
    ...(leastTextMm === undefined ? {} : { leastTextMm }),
  })
}

/** A split pattern is shown with a dash in its gap, where the face has one. */
function sampleOf(
  letters: string,
  typeface: Typeface,
): { readonly word: string; readonly ranges: MarkSpan['ranges'] } {
  const gap = letters.indexOf('_')
  if (gap <= 0) return { word: letters, ranges: [{ start: 0, end: letters.length }] }
  const word = letters.replace('_', typeface.missing('–').length === 0 ? '–' : '-')
  return {
    word,
    ranges: [
      { start: 0, end: gap },
      { start: gap + 1, end: word.length },
    ],
  }
}
