import type { CSSProperties, JSXNode } from 'satori/jsx'
import { mm } from '../faces/face.js'
import type { TypeScale } from '../text/type-scale.js'
import { borderDepthMm } from './card-border.js'
import { setMarkHeightMm } from './set-mark.js'

/** Between the place of a border and whatever stands inside it. */
const INSIDE_MM = 1

/** How much of a piece's width is left for its content. */
export function contentWidthMm(pieceWidthMm: number, border: string | undefined): number {
  return pieceWidthMm - 2 * (borderDepthMm(border) + INSIDE_MM)
}

/** A piece's outermost box: its content keeps clear of the border, of the cut and of the set mark at the foot. */
export function CardFrame({
  type,
  border,
  direction = 'column',
  children,
}: {
  readonly type: TypeScale
  /** The card's border, inside which the content stands. */
  readonly border: string | undefined
  readonly direction?: CSSProperties['flexDirection']
  readonly children: JSXNode
}) {
  const inset = borderDepthMm(border) + INSIDE_MM
  return (
    <div
      style={{
        display: 'flex',
        flexDirection: direction,
        width: '100%',
        height: '100%',
        boxSizing: 'border-box',
        padding: mm(inset),
        paddingBottom: mm(inset + setMarkHeightMm(type)),
      }}
    >
      {children}
    </div>
  )
}
