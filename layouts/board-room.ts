import type { Size } from '../src/geometry.js'
import type { LayoutRequest } from './layout.js'

/** Of a sheet without a margin of its own. */
const MARGIN_MM = 12.7
/** A board's frame, its set mark, and a little white. */
const FRAME_MM = 13

/** The room on a board that takes a sheet alone, a little less than it will be; for what is dealt before it has a size. */
export function boardRoom({ item }: Pick<LayoutRequest, 'item'>): Size {
  const [shorter = 0, longer = 0] = [item.paper.widthMm, item.paper.heightMm].sort((a, b) => a - b)
  const around = 2 * (item.marginMm ?? MARGIN_MM) + FRAME_MM
  const [across, down] = item.orientation === 'landscape' ? [longer, shorter] : [shorter, longer]
  return { widthMm: across - around, heightMm: down - around }
}
