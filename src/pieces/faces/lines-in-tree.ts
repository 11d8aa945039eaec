import type { CSSProperties, JSXNode } from 'satori/jsx'
import type { Box } from '../../geometry.js'
import { linesHeight } from '../text/break-lines.js'
import type { LinesOfText } from '../text/lines.js'
import type { Corner, TextBlock } from '../text/text-block.js'
import { measureTextLine } from '../text/text-line.js'
import type { Typeface } from '../typeface/typeface.js'
import { mm } from './face.js'
import { isElement } from './plain-tree.js'

interface BoxProps {
  readonly children?: JSXNode
  readonly style?: CSSProperties
  readonly 'data-lines'?: LinesOfText
}

/** A plain tree whose boxes of lines are as wide as their lines at least, but for those of a width of their own. */
export function withWidthsOfLines(node: JSXNode, typeface: Typeface): JSXNode {
  if (Array.isArray(node)) return node.map(child => withWidthsOfLines(child, typeface))
  if (typeof node === 'string')
    throw new Error(`"${node}" stands bare in a face: text is put into Lines or a slot`)
  if (!isElement(node)) return node
  const props = node.props as BoxProps
  const text = props['data-lines']
  if (text === undefined)
    return { ...node, props: { ...props, children: withWidthsOfLines(props.children, typeface) } }
  const minWidth = mm(Math.max(0, ...text.lines.map(line => lineWidth(line, text, typeface))))
  return { ...node, props: { ...props, style: { minWidth, ...props.style } } }
}

function lineWidth(line: string, { style }: LinesOfText, typeface: Typeface): number {
  const { sizeMm, weight } = style
  return measureTextLine({ typeface, text: line, sizeMm, weight: weight === 700 ? 'bold' : 'regular' })
}

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
