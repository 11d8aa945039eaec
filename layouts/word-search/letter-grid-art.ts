import type { Size } from '../../src/geometry.js'
import { moveArt } from '../../src/pieces/art/move-art.js'
import { pathText, rectangle } from '../../src/pieces/art/path-text.js'
import type { Art, PathShape } from '../../src/pieces/piece.js'
import { drawTextLine } from '../../src/pieces/text/text-line.js'
import type { Typeface } from '../../src/pieces/typeface/typeface.js'
import type { HiddenWord } from '../../src/sets/games/word-search.js'

export interface LetterGridArt {
  readonly rows: readonly string[]
  readonly room: Size
  readonly typeface: Typeface
  /** No letter is to be smaller, where there is room. */
  readonly leastMm?: number
  /** The side of a letter's place at most. */
  readonly mostMm?: number
  /** Those to be shown: their letters stay black, the others fade. */
  readonly shown?: readonly HiddenWord[]
}

/** Letters stand free in their places: their em as a share of a place's side. */
const LETTER_SHARE = 0.62
/** In large print the letters come closer before they come out too small. */
export const MOST_LETTER_SHARE = 0.9

/** The em of the letters in places of this side, no smaller than `leastMm` where the places have room for it. */
export function letterEm(sideMm: number, leastMm: number): number {
  return Math.max(sideMm * LETTER_SHARE, Math.min(leastMm, sideMm * MOST_LETTER_SHARE))
}
const FRAME_MM = 0.6
/** White inside the frame. */
const INSIDE_MM = 1.5
/** Frame and white, on both sides. */
const AROUND_MM = 2 * (FRAME_MM + INSIDE_MM)
/** Grey that a copier still keeps, for letters that belong to no word. */
const FADED = '#8c8c8c'

/** The side of a letter's place in the room, at most `mostMm`. */
export function placeSide(
  rows: readonly string[],
  { widthMm, heightMm }: Size,
  mostMm = Number.POSITIVE_INFINITY,
): number {
  const columns = rows[0]!.length
  return Math.min(mostMm, (widthMm - AROUND_MM) / columns, (heightMm - AROUND_MM) / rows.length)
}

/** The frame round letters whose places have sides of `sideMm`. */
export function letterGridSize(rows: readonly string[], sideMm: number): Size {
  return { widthMm: rows[0]!.length * sideMm + AROUND_MM, heightMm: rows.length * sideMm + AROUND_MM }
}

/** The letters in the middle of the room, in a frame. */
export function drawLetterGrid({ rows, room, typeface, leastMm = 0, mostMm, shown }: LetterGridArt): Art {
  const columns = rows[0]!.length
  const sideMm = placeSide(rows, room, mostMm)
  const [widthMm, heightMm] = [columns * sideMm, rows.length * sideMm]
  const left = (room.widthMm - widthMm) / 2
  const top = (room.heightMm - heightMm) / 2
  const sizeMm = letterEm(sideMm, leastMm)
  const { ascender, xHeight } = typeface.metrics
  const standsOut = shown === undefined ? undefined : placesOf(shown)
  const letters = rows.flatMap((row, down) =>
    [...row].map((letter, across): Art => {
      const color = standsOut === undefined || standsOut.has(`${down} ${across}`) ? '#000000' : FADED
      const { art } = drawTextLine({ typeface, text: letter, sizeMm, color })
      // The middle of an x stands in the middle of its place.
      const above = (ascender - xHeight / 2) * sizeMm
      const x = left + (across + 0.5) * sideMm - art.widthMm / 2
      return moveArt(art, x, top + (down + 0.5) * sideMm - above, room)
    }),
  )
  return {
    ...room,
    shapes: [
      frame(left - INSIDE_MM, top - INSIDE_MM, left + widthMm + INSIDE_MM, top + heightMm + INSIDE_MM),
      ...letters.flatMap(art => art.shapes),
    ],
    text: letters.flatMap(art => art.text),
  }
}

function placesOf(hidden: readonly HiddenWord[]): ReadonlySet<string> {
  return new Set(
    hidden.flatMap(({ word, row, column, down, across }) =>
      [...word].map((_, step) => `${row + down * step} ${column + across * step}`),
    ),
  )
}

function frame(left: number, top: number, right: number, bottom: number): PathShape {
  const bars = [
    rectangle(left - FRAME_MM, top - FRAME_MM, right + FRAME_MM, top),
    rectangle(left - FRAME_MM, bottom, right + FRAME_MM, bottom + FRAME_MM),
    rectangle(left - FRAME_MM, top, left, bottom),
    rectangle(right, top, right + FRAME_MM, bottom),
  ]
  return { kind: 'path', d: pathText(bars.flat()), fill: '#000000' }
}
