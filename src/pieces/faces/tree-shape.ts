import type { CSSProperties, JSXNode } from 'satori/jsx'
import type { LinesOfText } from '../text/lines.js'
import { measureTextLine } from '../text/text-line.js'
import type { Typeface } from '../typeface/typeface.js'
import { mm } from './face.js'
import { isElement } from './plain-tree.js'

/**
 * What satori is given: boxes alone, in which neither names of slots nor lines of text stand, but their numbers. Rows of a table
 * that differ in their words are one shape, and are laid out once.
 */
export interface TreeShape {
  readonly tree: JSXNode
  /** Names of its slots, by their numbers. */
  readonly slots: readonly string[]
  /** The text of its boxes of lines, by their numbers. */
  readonly lines: readonly LinesOfText[]
}

/** What a box of a shape has in place of what it is filled with. */
export interface BoxToFill {
  readonly 'data-slot'?: number
  readonly 'data-lines'?: number
  readonly 'data-apart'?: number
}

interface BoxProps {
  readonly children?: JSXNode
  readonly style?: CSSProperties
  readonly 'data-slot'?: string
  readonly 'data-lines'?: LinesOfText
}

/** Of a plain tree; its boxes of lines are as wide as their lines at least, but for those of a width of their own. */
export function treeShape(plain: JSXNode, typeface: Typeface): TreeShape {
  const slots: string[] = []
  const lines: LinesOfText[] = []
  const shapeOf = (node: JSXNode, within: CSSProperties): JSXNode => {
    if (Array.isArray(node)) return node.map(child => shapeOf(child, within))
    if (typeof node === 'string')
      throw new Error(`"${node}" stands bare in a face: text is put into Lines or a slot`)
    if (!isElement(node)) return node
    const { 'data-slot': slot, 'data-lines': text, ...props } = node.props as BoxProps
    if (text !== undefined) {
      const number = lines.push(text) - 1
      return {
        ...node,
        props: { ...props, 'data-lines': number, style: boxOfLines(text, props, within, typeface) },
      }
    }
    const numbered = slot === undefined ? props : { ...props, 'data-slot': slots.push(slot) - 1 }
    return { ...node, props: { ...numbered, children: shapeOf(props.children, props.style ?? {}) } }
  }
  return { tree: shapeOf(plain, {}), slots, lines }
}

function boxOfLines(
  text: LinesOfText,
  { style = {} }: BoxProps,
  within: CSSProperties,
  typeface: Typeface,
): CSSProperties {
  const minWidth = mm(Math.max(0, ...text.lines.map(line => lineWidth(line, text, typeface))))
  return minWidth <= widthOfItsOwn(style, within) ? style : { minWidth, ...style }
}

/** What a box says by itself of its width, or the column that it fills from side to side; -1 where neither does. */
function widthOfItsOwn({ width, flexShrink, ...more }: CSSProperties, within: CSSProperties): number {
  if (typeof width === 'number' && flexShrink === 0) return width
  const fills = width === undefined && Object.keys(more).every(key => ofNoWidth.has(key))
  const isColumn = within.flexDirection === 'column' && Object.keys(within).every(key => ofColumn.has(key))
  return fills && isColumn && typeof within.width === 'number' ? within.width : -1
}

/** What a box may say without another width than its column's, and a column without another than it has. */
const ofNoWidth: ReadonlySet<string> = new Set(['display', 'height'])
const ofColumn: ReadonlySet<string> = new Set(['display', 'flexDirection', 'width', 'flexShrink'])

function lineWidth(line: string, { style }: LinesOfText, typeface: Typeface): number {
  const { sizeMm, weight } = style
  return measureTextLine({ typeface, text: line, sizeMm, weight: weight === 700 ? 'bold' : 'regular' })
}
