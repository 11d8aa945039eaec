import type { ColumnsAndRows, Size } from '../../geometry.js'
import { pathText, rectangle } from '../art/path-text.js'
import type { Art, PathShape } from '../piece.js'

/** The lines of equal cells, side by side with shared lines, drawn as filled bars that fill `room` to its edges. */
export function drawCellLines({
  room,
  columns,
  rows,
  lineMm,
}: ColumnsAndRows & { readonly room: Size; readonly lineMm: number }): Art {
  const { widthMm, heightMm } = room
  const bar = (left: number, top: number, right: number, bottom: number): PathShape => ({
    kind: 'path',
    d: pathText(rectangle(left, top, right, bottom)),
    fill: '#000000',
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
