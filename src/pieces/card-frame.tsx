import type { CSSProperties, JSXNode } from 'satori/jsx'
import { mm } from './face.js'
import { CARD_BORDER_INSET_MM, setMarkHeightMm } from './set-mark.js'
import type { TypeScale } from './type-scale.js'

/** Between the place of a border and whatever stands inside it. */
const INSIDE_MM = 1

/** How much of a piece's width is left for its content. */
export function contentWidthMm(pieceWidthMm: number): number {
  return pieceWidthMm - 2 * (CARD_BORDER_INSET_MM + INSIDE_MM)
}

/** A piece's outermost box: its content keeps clear of the border, of the cut and of the set mark at the foot. */
export function CardFrame({
  type,
  direction = 'column',
  children,
}: {
  readonly type: TypeScale
  readonly direction?: CSSProperties['flexDirection']
  readonly children: JSXNode
}) {
  const inset = CARD_BORDER_INSET_MM + INSIDE_MM
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
