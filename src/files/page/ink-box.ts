import type { Box } from '../../geometry.js'
import { lettersOf, type PlacedLetters } from '../../pieces/art/placed-letters.js'
import type { Art, PathShape, Shape } from '../../pieces/piece.js'
import { glyphReach } from '../../pieces/typeface/glyph-reach.js'
import { toDecimal } from './decimal.js'
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
  const box = outlineBox(shape)
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

/** Of plain letters it is known without their path being read again: each number of it was rounded by itself. */
function outlineBox(shape: PathShape): Box | undefined {
  const letters = lettersOf(shape)
  return letters === undefined || letters.moved === true ? pathBox(shape.d) : lettersBox(letters)
}

function lettersBox({ run, sizeMm, xMm, yMm }: PlacedLetters): Box | undefined {
  let left = Infinity
  let top = Infinity
  let right = -Infinity
  let bottom = -Infinity
  for (const { outline, xEm, yEm } of run.glyphs) {
    const reach = glyphReach(outline)
    const x = xMm + xEm * sizeMm
    const y = yMm + yEm * sizeMm
    left = Math.min(left, reach.left * sizeMm + x)
    top = Math.min(top, reach.top * sizeMm + y)
    right = Math.max(right, reach.right * sizeMm + x)
    bottom = Math.max(bottom, reach.bottom * sizeMm + y)
  }
  if (left > right) return undefined
  const [xOfBox, yOfBox] = [toDecimal(left), toDecimal(top)]
  return {
    xMm: xOfBox,
    yMm: yOfBox,
    widthMm: toDecimal(right) - xOfBox,
    heightMm: toDecimal(bottom) - yOfBox,
  }
}
