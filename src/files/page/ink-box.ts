import type { Box } from '../../geometry.js'
import type { Art, Shape } from '../../pieces/piece.js'
import { pathBox } from './path-data.js'

/** A box that holds all of the art's ink, which may reach beyond the art's own size; `undefined` for a blank art. */
export function inkBox(art: Art): Box | undefined {
  const boxes = art.shapes.map(shapeInkBox).filter(box => box !== undefined)
  if (boxes.length === 0) return undefined
  const left = Math.min(...boxes.map(box => box.xMm))
  const top = Math.min(...boxes.map(box => box.yMm))
  const right = Math.max(...boxes.map(box => box.xMm + box.widthMm))
  const bottom = Math.max(...boxes.map(box => box.yMm + box.heightMm))
  return { xMm: left, yMm: top, widthMm: right - left, heightMm: bottom - top }
}

/** A box that holds the shape's ink, its stroke included; `undefined` for an empty path. */
export function shapeInkBox(shape: Shape): Box | undefined {
  if (shape.kind === 'image') return shape.box
  const box = pathBox(shape.d)
  if (box === undefined || shape.stroke === undefined) return box
  // A mitred corner reaches at most 4 half widths out (SVG 2, §13.5.4: stroke-miterlimit is 4 by default).
  const reach = 2 * shape.stroke.widthMm
  return {
    xMm: box.xMm - reach,
    yMm: box.yMm - reach,
    widthMm: box.widthMm + 2 * reach,
    heightMm: box.heightMm + 2 * reach,
  }
}
