import { Resvg } from '@resvg/resvg-js'
import { type Box, MM_PER_INCH } from '../../geometry.js'
import type { Shape } from '../../pieces/piece.js'
import { shapeInkBox } from '../page/ink-box.js'
import { shapeMarkup } from '../page/svg-body.js'
import type { DrawnPixels } from './sprite.js'

/** The shape drawn by resvg, its art's origin on a corner of pixels; `undefined` for an empty path. */
export function drawShape(shape: Shape, turn: 0 | 180, dpi: number): DrawnPixels | undefined {
  const upright = shapeInkBox(shape)
  if (upright === undefined) return undefined
  const box = turn === 0 ? upright : turnBox(upright)
  const mmPerPixel = MM_PER_INCH / dpi
  const left = Math.floor(box.xMm / mmPerPixel)
  const top = Math.floor(box.yMm / mmPerPixel)
  const widthPx = Math.max(1, Math.ceil((box.xMm + box.widthMm) / mmPerPixel) - left)
  const heightPx = Math.max(1, Math.ceil((box.yMm + box.heightMm) / mmPerPixel) - top)
  // Moved by whole pixels: so a word has the same pixels alone as in its line, whatever else is drawn.
  const scale = (turn === 0 ? 1 : -1) / mmPerPixel
  const svg =
    `<svg xmlns="http://www.w3.org/2000/svg" width="${widthPx}" height="${heightPx}">` +
    `<g transform="matrix(${scale} 0 0 ${scale} ${-left} ${-top})">${shapeMarkup(shape)}</g></svg>`
  const drawn = new Resvg(svg, { font: { loadSystemFonts: false } }).render()
  return { rgba: drawn.pixels, widthPx: drawn.width, heightPx: drawn.height, left, top }
}

/** The box turned by 180° about the origin. */
function turnBox({ xMm, yMm, widthMm, heightMm }: Box): Box {
  return { xMm: -xMm - widthMm, yMm: -yMm - heightMm, widthMm, heightMm }
}
