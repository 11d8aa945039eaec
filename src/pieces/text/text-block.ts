import type { Size } from '../../geometry.js'
import { moveArt } from '../art/move-art.js'
import type { Art, TextRun } from '../piece.js'
import type { Typeface } from '../typeface/typeface.js'
import { LINE_HEIGHT, linesHeight, type TextStyle } from './break-lines.js'
import { drawTextLine, layTextLine, type TextLineRequest } from './text-line.js'

export interface TextBlock {
  readonly typeface: Typeface
  readonly lines: readonly string[]
  readonly style: TextStyle
  readonly room: Size
}

const shareBefore = { left: 0, centre: 1 / 2, right: 1 } as const

/** Lines of text as outlines in the middle of the room's height, where `Lines` would have them. */
export function drawTextBlock(block: TextBlock): Art {
  const drawn = placeLines(block).map(({ line, xMm, yMm }) =>
    moveArt(drawTextLine(line).art, xMm, yMm, block.room),
  )
  return { ...block.room, shapes: drawn.flatMap(art => art.shapes), text: drawn.flatMap(art => art.text) }
}

/** Where the lines of the block stand in its room, known without drawing them. */
export function layTextBlock(block: TextBlock): readonly TextRun[] {
  return placeLines(block).flatMap(({ line, xMm, yMm }) =>
    layTextLine(line).text.map(run => ({ ...run, xMm: run.xMm + xMm, baselineMm: run.baselineMm + yMm })),
  )
}

interface PlacedLine {
  readonly line: TextLineRequest
  readonly xMm: number
  readonly yMm: number
}

function placeLines({ typeface, lines, style, room }: TextBlock): readonly PlacedLine[] {
  const { sizeMm, weight, color, align = 'left' } = style
  const topMm = (room.heightMm - linesHeight(lines.length, sizeMm)) / 2
  return lines.map((text, index) => {
    const line: TextLineRequest = {
      typeface,
      text,
      sizeMm,
      weight: weight === 700 ? 'bold' : 'regular',
      ...(color === undefined ? {} : { color }),
    }
    const { widthMm, baselineMm } = layTextLine(line)
    const middleMm = topMm + (index + 1 / 2) * sizeMm * LINE_HEIGHT
    const freeMm = room.widthMm - widthMm
    return {
      line,
      xMm: freeMm * shareBefore[align],
      yMm: middleMm + typeface.metrics.middle * sizeMm - baselineMm,
    }
  })
}
