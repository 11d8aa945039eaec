import type { Box, Size } from '../../geometry.js'
import type { Art, TextRun } from '../piece.js'
import type { Typeface } from '../typeface/typeface.js'
import { LINE_HEIGHT, linesHeight, type TextStyle } from './break-lines.js'
import { measureTextLine, type TextLineRequest, textLineShapes } from './text-line.js'

export interface TextBlock {
  readonly typeface: Typeface
  readonly lines: readonly string[]
  readonly style: TextStyle
  readonly room: Size
}

const shareBefore = { left: 0, centre: 1 / 2, right: 1 } as const

/** Lines of text as outlines in the middle of the room's height; the room's corner stands `at`. */
export function drawTextBlock(block: TextBlock, at: Pick<Box, 'xMm' | 'yMm'> = { xMm: 0, yMm: 0 }): Art {
  const placed = placeLines(block, at)
  return {
    ...block.room,
    shapes: placed.flatMap(({ line, run }) => textLineShapes(line, run)),
    text: placed.map(({ run }) => run),
  }
}

/** Where the lines of the block stand in its room, known without drawing them. */
export function layTextBlock(block: TextBlock): readonly TextRun[] {
  return placeLines(block, { xMm: 0, yMm: 0 }).map(({ run }) => run)
}

interface PlacedLine {
  readonly line: TextLineRequest
  readonly run: TextRun
}

function placeLines(
  { typeface, lines, style, room }: TextBlock,
  { xMm, yMm }: Pick<Box, 'xMm' | 'yMm'>,
): readonly PlacedLine[] {
  const { sizeMm, weight, color, align = 'left' } = style
  const topMm = yMm + (room.heightMm - linesHeight(lines.length, sizeMm)) / 2
  return lines.flatMap((text, index) => {
    if (text === '') return []
    const line: TextLineRequest = {
      typeface,
      text,
      sizeMm,
      weight: weight === 700 ? 'bold' : 'regular',
      ...(color === undefined ? {} : { color }),
    }
    const widthMm = measureTextLine(line)
    const middleMm = topMm + (index + 1 / 2) * sizeMm * LINE_HEIGHT
    const run: TextRun = {
      text,
      xMm: xMm + (room.widthMm - widthMm) * shareBefore[align],
      baselineMm: middleMm + typeface.metrics.middle * sizeMm,
      widthMm,
      sizeMm,
    }
    return { line, run }
  })
}
