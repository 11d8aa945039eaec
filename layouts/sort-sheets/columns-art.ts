import type { Size } from '../../src/geometry.js'
import { pathText, rectangle } from '../../src/pieces/art/path-text.js'
import type { Art } from '../../src/pieces/piece.js'

const LINE_MM = 0.6

/** A frame with a line between two columns, and one below the headings. */
export function drawColumns(room: Size, columns: number, headMm: number): Art {
  const { widthMm, heightMm } = room
  const uprights = Array.from({ length: columns + 1 }, (_, index) => (index * (widthMm - LINE_MM)) / columns)
  const bars = [
    ...uprights.map(left => rectangle(left, 0, left + LINE_MM, heightMm)),
    ...[0, headMm, heightMm - LINE_MM].map(top => rectangle(0, top, widthMm, top + LINE_MM)),
  ]
  return {
    ...room,
    shapes: bars.map(bar => ({ kind: 'path', d: pathText(bar), fill: '#000000' })),
    text: [],
  }
}
