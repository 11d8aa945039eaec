import type { Box } from '../../geometry.js'
import { linesHeight } from '../text/break-lines.js'
import type { LinesOfText } from '../text/lines.js'
import type { Corner, TextBlock } from '../text/text-block.js'
import type { Typeface } from '../typeface/typeface.js'

/** A block of text and where the corner of its room is. */
export interface TextInBox {
  readonly block: TextBlock
  readonly at: Corner
}

/** Lines in their box as it is laid out: they stand from its top. */
export function linesInBox({ lines, style }: LinesOfText, box: Box, typeface: Typeface): TextInBox {
  const room = { widthMm: box.widthMm, heightMm: linesHeight(lines.length, style.sizeMm) }
  return { block: { typeface, lines, style, room }, at: box }
}
