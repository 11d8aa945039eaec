import type { ColumnsAndRows, Size } from '../../src/geometry.js'
import { pathText, rectangle } from '../../src/pieces/art/path-text.js'
import type { Art, PathShape } from '../../src/pieces/piece.js'

/** The lines of a board of equal cells, outer edge included, drawn as filled bars that stay inside `room`. */
export function boardLines({
  room,
  columns,
  rows,
  lineMm,
  color = '#000000',
}: ColumnsAndRows & {
  readonly room: Size
  readonly lineMm: number
  readonly color?: string
}): Art {
  const { widthMm, heightMm } = room
  const bar = (left: number, top: number, right: number, bottom: number): PathShape => ({
    kind: 'path',
    d: pathText(rectangle(left, top, right, bottom)),
    fill: color,
  })
  const places = (count: number, lengthMm: number) =>
    Array.from({ length: count + 1 }, (_, index) => (index * (lengthMm - lineMm)) / count)
  return {
    widthMm,
    heightMm,
    shapes: [
      ...places(columns, widthMm).map(left => bar(left, 0, left + lineMm, heightMm)),
      ...places(rows, heightMm).map(top => bar(0, top, widthMm, top + lineMm)),
    ],
    text: [],
  }
}
