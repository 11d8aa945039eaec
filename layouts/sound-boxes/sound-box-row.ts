import type { Size } from '../../src/geometry.js'
import { moveArt } from '../../src/pieces/art/move-art.js'
import { pathText, polygon, rectangle } from '../../src/pieces/art/path-text.js'
import { drawCellLines } from '../../src/pieces/parts/cell-lines.js'
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
/** A child's finger end still has room: our own judgement, no source. */
export const LEAST_BOX_MM = 12
export const MOST_BOX_MM = 32
/** Below the boxes: white, the arrow, white. */
export const ARROW_MM = 7

/** A row of square boxes in the middle of the room, one a sound, side by side with shared lines. */
export function drawSoundBoxes({ boxes, boxMm, arrow, align, room }: SoundBoxRow): Art {
  const size = { widthMm: boxes * boxMm + LINE_MM, heightMm: boxMm + LINE_MM }
  const left = align === 'left' ? 0 : (room.widthMm - size.widthMm) / 2
  const top = (room.heightMm - size.heightMm - (arrow ? ARROW_MM : 0)) / 2
  const lines = drawCellLines({ room: size, columns: boxes, rows: 1, lineMm: LINE_MM })
  const row = moveArt(lines, left, top, room)
  if (!arrow) return row
  const middleMm = top + size.heightMm + ARROW_MM / 2
  return { ...row, shapes: [...row.shapes, drawArrow(left, left + size.widthMm, middleMm)] }
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
