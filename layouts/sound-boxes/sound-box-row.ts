import type { Size } from '../../src/geometry.js'
import { pathText, polygon, rectangle } from '../../src/pieces/art/path-text.js'
import type { Art, PathShape } from '../../src/pieces/piece.js'

export interface SoundBoxRow {
  readonly boxes: number
  /** Edge of each square box, from the middle of one line to the middle of the next. */
  readonly boxMm: number
  /** Whether an arrow below shows which way to go. */
  readonly arrow: boolean
  readonly align: 'left' | 'centre'
  readonly room: Size
}

const LINE_MM = 0.7
/** Below the boxes: white, the arrow, white. */
export const ARROW_MM = 7

/** A row of square boxes in the middle of the room, one a sound, side by side with shared lines. */
export function drawSoundBoxes({ boxes, boxMm, arrow, align, room }: SoundBoxRow): Art {
  const widthMm = boxes * boxMm + LINE_MM
  const heightMm = boxMm + LINE_MM + (arrow ? ARROW_MM : 0)
  const left = align === 'left' ? 0 : (room.widthMm - widthMm) / 2
  const top = (room.heightMm - heightMm) / 2
  const right = left + widthMm
  const bottom = top + boxMm + LINE_MM
  const bars = [
    rectangle(left, top, right, top + LINE_MM),
    rectangle(left, bottom - LINE_MM, right, bottom),
    ...Array.from({ length: boxes + 1 }, (_, line) =>
      rectangle(left + line * boxMm, top, left + line * boxMm + LINE_MM, bottom),
    ),
  ]
  const arrowShapes = arrow ? [drawArrow(left, right, bottom + ARROW_MM / 2)] : []
  return {
    ...room,
    shapes: [{ kind: 'path', d: pathText(bars.flat()), fill: '#000000' }, ...arrowShapes],
    text: [],
  }
}

/** To the right, along the finger's way under the boxes. */
function drawArrow(left: number, right: number, y: number): PathShape {
  const [halfMm, headMm] = [LINE_MM / 2, 2.2]
  return {
    kind: 'path',
    d: pathText([
      ...rectangle(left, y - halfMm, right - headMm, y + halfMm),
      ...polygon([
        [right - 1.6 * headMm, y - headMm],
        [right, y],
        [right - 1.6 * headMm, y + headMm],
      ]),
    ]),
    fill: '#000000',
  }
}
