/** Straight lines and boxes as art. */
import type { Size } from '../../geometry.js'
import { drawnWhenAsked } from '../../pieces/art/drawn-when-asked.js'
import type { Art } from '../../pieces/piece.js'

/** A straight line from (x1, y1) to (x2, y2) in mm. */
export type Segment = readonly [x1: number, y1: number, x2: number, y2: number]

export interface StrokesRequest {
  readonly size: Size
  readonly segments: readonly Segment[]
  readonly widthMm: number
  readonly color?: string
}

export function drawStrokes({ size, segments, widthMm, color = '#000000' }: StrokesRequest): Art {
  return drawnWhenAsked({ ...size, text: [] }, () => {
    const d = segments
      .map(([x1, y1, x2, y2]) => `M${decimal(x1)} ${decimal(y1)}L${decimal(x2)} ${decimal(y2)}`)
      .join('')
    return d === '' ? [] : [{ kind: 'path', d, fill: 'none', stroke: { color, widthMm } }]
  })
}

/** An empty box of that size, its line drawn inside it. */
export function drawFrame(size: Size, widthMm: number, color = '#000000'): Art {
  const half = widthMm / 2
  const [left, top, right, bottom] = [half, half, size.widthMm - half, size.heightMm - half].map(decimal)
  const d = `M${left} ${top}L${right} ${top}L${right} ${bottom}L${left} ${bottom}Z`
  return { ...size, shapes: [{ kind: 'path', d, fill: 'none', stroke: { color, widthMm } }], text: [] }
}

function decimal(value: number): string {
  return String(Number(value.toFixed(3)))
}
