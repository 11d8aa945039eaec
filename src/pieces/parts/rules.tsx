import { mm } from '../faces/face.js'

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

/** A small empty square to tick. */
export function TickBox({ sizeMm }: { readonly sizeMm: number }) {
  return (
    <div
      style={{
        display: 'flex',
        width: mm(sizeMm),
        height: mm(sizeMm),
        boxSizing: 'border-box',
        padding: mm(0.35),
        flexShrink: 0,
        backgroundColor: '#000000',
      }}
    >
      <div style={{ display: 'flex', flexGrow: 1, backgroundColor: '#ffffff' }} />
    </div>
  )
}

/** A line to write on. */
export function WritingLine({ color = '#737373' }: { readonly color?: string }) {
  return <div style={{ display: 'flex', flexGrow: 1, height: mm(HAIRLINE_MM), backgroundColor: color }} />
}
