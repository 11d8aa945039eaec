import type { Size } from '../src/geometry.js'
import type { LayoutRequest } from './layout.js'

/** Of a sheet without a margin of its own. */
const MARGIN_MM = 12.7
/** A board's frame, its set mark, and a little white. */
const FRAME_MM = 13

/** The room on a board, a little less than it will be; for what is dealt before it has a size. */
export function boardRoom({ item }: Pick<LayoutRequest, 'item'>): Size {
  const { paper, orientation, division, gapMm } = item
  if (division.kind === 'card') return insideFrame(division.size)
  const [shorter = 0, longer = 0] = [paper.widthMm, paper.heightMm].sort((a, b) => a - b)
  const marginsMm = 2 * (item.marginMm ?? MARGIN_MM)
  const [widthMm, heightMm] = orientation === 'landscape' ? [longer, shorter] : [shorter, longer]
  // Where the plan leaves one of them out, boards keep their shape.
  const { across, down } = division.kind === 'count' ? division : { across: 1, down: 1 }
  const share = (lengthMm: number, count: number) => (lengthMm - marginsMm - gapMm * (count - 1)) / count
  return insideFrame({
    widthMm: share(widthMm, across ?? down ?? 1),
    heightMm: share(heightMm, down ?? across ?? 1),
  })
}

function insideFrame({ widthMm, heightMm }: Size): Size {
  return { widthMm: Math.max(1, widthMm - FRAME_MM), heightMm: Math.max(1, heightMm - FRAME_MM) }
}
