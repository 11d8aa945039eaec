import type { JSXNode } from 'satori/jsx'
import type { Size } from '../../geometry.js'
import { mm } from '../faces/face.js'
import type { TypeScale } from '../text/type-scale.js'
import { borderDepthMm } from './card-border.js'
import { setMarkHeightMm } from './set-mark.js'

/** Between the place of a border and whatever stands inside it. */
const INSIDE_MM = 1

/** The room for a piece's content: inside the border, above the set mark. */
export function contentRoom({ widthMm, heightMm }: Size, border: string | undefined, type: TypeScale): Size {
  const aroundMm = 2 * (borderDepthMm(border) + INSIDE_MM)
  return { widthMm: widthMm - aroundMm, heightMm: heightMm - aroundMm - setMarkHeightMm(type) }
}

/** A piece's outermost box: its content keeps clear of the border, of the cut and of the set mark at the foot. */
export function CardFrame({
  type,
  border,
  children,
}: {
  readonly type: TypeScale
  /** The card's border, inside which the content stands. */
  readonly border: string | undefined
  readonly children: JSXNode
}) {
  const inset = borderDepthMm(border) + INSIDE_MM
  return (
    <div
      style={{
        display: 'flex',
        flexDirection: 'column',
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
