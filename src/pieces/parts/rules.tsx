import type { Size } from '../../geometry.js'
import { pathText, rectangle } from '../art/path-text.js'
import { type Art, mm } from '../faces/face.js'

/** Hairlines and boxes of a page, drawn as filled areas so that every format shows the same width. */

const HAIRLINE_MM = 0.25

/** A level line over the whole width of its parent, at its foot. */
export function Rule({ color = '#8c8c8c' }: { readonly color?: string }) {
  return (
    <div
      style={{
        display: 'flex',
        position: 'absolute',
        left: 0,
        right: 0,
        bottom: 0,
        height: mm(HAIRLINE_MM),
        backgroundColor: color,
      }}
    />
  )
}

/** A line to cut along, across the middle of its parent. */
export function DashedRule() {
  const dashes = Array.from({ length: 40 }, () => (
    <div
      style={{
        display: 'flex',
        flexGrow: 1,
        flexBasis: 0,
        marginRight: mm(1.5),
        height: mm(HAIRLINE_MM),
        backgroundColor: '#595959',
      }}
    />
  ))
  return <div style={{ display: 'flex', width: '100%', height: '100%', alignItems: 'center' }}>{dashes}</div>
}

/** A small empty square to tick. */
export function TickBox({ sizeMm }: { readonly sizeMm: number }) {
  return <EmptyBox widthMm={sizeMm} heightMm={sizeMm} lineMm={0.35} color="#000000" />
}

/** A box with nothing in it, to be filled in by hand. */
export function EmptyBox({
  widthMm,
  heightMm,
  lineMm,
  color,
}: Size & { readonly lineMm: number; readonly color: string }) {
  return (
    <div
      style={{
        display: 'flex',
        width: mm(widthMm),
        height: mm(heightMm),
        boxSizing: 'border-box',
        padding: mm(lineMm),
        flexShrink: 0,
        backgroundColor: color,
      }}
    >
      <div style={{ display: 'flex', flexGrow: 1, backgroundColor: '#ffffff' }} />
    </div>
  )
}

/** A line to write on, at the foot of an art no higher than it. */
export function drawWritingLine({ widthMm }: Size): Art {
  const d = pathText(rectangle(0, 0, widthMm, HAIRLINE_MM))
  return { widthMm, heightMm: HAIRLINE_MM, shapes: [{ kind: 'path', d, fill: '#737373' }], text: [] }
}

/** A line to write on. */
export function WritingLine({ color = '#737373' }: { readonly color?: string }) {
  return <div style={{ display: 'flex', flexGrow: 1, height: mm(HAIRLINE_MM), backgroundColor: color }} />
}
