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

export type Corner = Pick<Box, 'xMm' | 'yMm'>

/** Lines of text as outlines in the middle of the room's height; the room's corner stands `at`. */
export function drawTextBlock(block: TextBlock, at: Corner = origin): Art {
  const placed = placeLines(block, at)
  return {
    ...block.room,
    shapes: placed.flatMap(({ line, run }) => textLineShapes(line, run)),
    text: placed.map(({ run }) => run),
  }
}

/** Where its lines stand, known without drawing them. */
export function layTextBlock(block: TextBlock, at: Corner = origin): readonly TextRun[] {
  return placeLines(block, at).map(({ run }) => run)
}

const origin: Corner = { xMm: 0, yMm: 0 }

interface PlacedLine {
  readonly line: TextLineRequest
  readonly run: TextRun
}

function placeLines(
  { typeface, lines, style, room }: TextBlock,
  { xMm, yMm }: Corner,
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
