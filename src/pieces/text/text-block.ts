import type { Size } from '../../geometry.js'
import { moveArt } from '../art/move-art.js'
import type { Art } from '../piece.js'
import type { Typeface } from '../typeface/typeface.js'
import { LINE_HEIGHT, linesHeight, type TextStyle } from './break-lines.js'
import { drawTextLine } from './text-line.js'

export interface TextBlock {
  readonly typeface: Typeface
  readonly lines: readonly string[]
  readonly style: TextStyle
  readonly room: Size
}

const shareBefore = { left: 0, centre: 1 / 2, right: 1 } as const

/** Lines of text as outlines in the middle of the room's height, where `Lines` would have them. */
export function drawTextBlock({ typeface, lines, style, room }: TextBlock): Art {
  const { sizeMm, weight, color, align = 'left' } = style
  const topMm = (room.heightMm - linesHeight(lines.length, sizeMm)) / 2
  const drawn = lines.map((text, index) => {
    const line = drawTextLine({
      typeface,
      text,
      sizeMm,
      weight: weight === 700 ? 'bold' : 'regular',
      ...(color === undefined ? {} : { color }),
    })
    const middleMm = topMm + (index + 1 / 2) * sizeMm * LINE_HEIGHT
    const baselineMm = middleMm + typeface.metrics.middle * sizeMm
    const freeMm = room.widthMm - line.art.widthMm
    return moveArt(line.art, freeMm * shareBefore[align], baselineMm - line.baselineMm, room)
  })
  return { ...room, shapes: drawn.flatMap(art => art.shapes), text: drawn.flatMap(art => art.text) }
}
