import type { Size } from '../../src/geometry.js'
import { moveArt } from '../../src/pieces/art/move-art.js'
import { pathText } from '../../src/pieces/art/path-text.js'
import { disc } from '../../src/pieces/marks/broken-lines.js'
import { drawBorder } from '../../src/pieces/parts/borders.js'
import type { Art } from '../../src/pieces/piece.js'
import { drawTextLine } from '../../src/pieces/text/text-line.js'
import type { Typeface } from '../../src/pieces/typeface/typeface.js'

/** Where the pips of a common die stand on its side, as shares of the side. */
const pips: readonly (readonly (readonly [x: number, y: number])[])[] = [
  [[0.5, 0.5]],
  [
    [0.27, 0.27],
    [0.73, 0.73],
  ],
  [
    [0.25, 0.25],
    [0.5, 0.5],
    [0.75, 0.75],
  ],
  [
    [0.27, 0.27],
    [0.73, 0.27],
    [0.27, 0.73],
    [0.73, 0.73],
  ],
  [
    [0.25, 0.25],
    [0.75, 0.25],
    [0.5, 0.5],
    [0.25, 0.75],
    [0.75, 0.75],
  ],
  [
    [0.28, 0.22],
    [0.72, 0.22],
    [0.28, 0.5],
    [0.72, 0.5],
    [0.28, 0.78],
    [0.72, 0.78],
  ],
]

const PIP_SHARE = 0.095
/** Of its place: white is left around it. */
const SIDE_SHARE = 0.82
const MOST_SIDE_MM = 16

/** A side of a die, `thrown` from 1 to 6, in the middle of the room. */
export function drawDieFace(thrown: number, room: Size): Art {
  const sideMm = Math.min(MOST_SIDE_MM, SIDE_SHARE * Math.min(room.widthMm, room.heightMm))
  const frame = drawBorder({ line: 'single', corners: 'round', size: { widthMm: sideMm, heightMm: sideMm } })
  const dots = (pips[thrown - 1] ?? []).map(([x, y]) => disc(x * sideMm, y * sideMm, PIP_SHARE * sideMm))
  const art: Art = {
    widthMm: sideMm,
    heightMm: sideMm,
    shapes: [...frame, { kind: 'path', d: pathText(dots.flat()), fill: '#000000' }],
    text: [],
  }
  return moveArt(art, (room.widthMm - sideMm) / 2, (room.heightMm - sideMm) / 2, room)
}

/** A number, for the sum of two dice; `leastMm` is the least em of text on the board. */
export function drawSum(sum: number, room: Size, typeface: Typeface, leastMm: number): Art {
  const usualMm = Math.min(MOST_SIDE_MM, SIDE_SHARE * Math.min(room.widthMm, room.heightMm)) * 0.7
  const sizeMm = Math.max(usualMm, leastMm)
  const { art } = drawTextLine({ typeface, text: String(sum), sizeMm, weight: 'bold' })
  return moveArt(art, (room.widthMm - art.widthMm) / 2, (room.heightMm - art.heightMm) / 2, room)
}
