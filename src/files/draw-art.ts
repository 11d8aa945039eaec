import { Resvg } from '@resvg/resvg-js'
import { type Box, MM_PER_INCH } from '../geometry.js'
import type { Art } from '../pieces/piece.js'
import { inkBox } from './ink-box.js'
import { fitPicture } from './picture.js'
import type { DrawnPixels } from './sprite.js'
import { artMarkup } from './svg-body.js'

/** The art drawn by resvg, its origin on a corner of pixels; `undefined` for a blank art. */
export async function drawArt(art: Art, turn: 0 | 180, dpi: number): Promise<DrawnPixels | undefined> {
  const upright = inkBox(art)
  if (upright === undefined) return undefined
  const box = turn === 0 ? upright : turnBox(upright)
  const mmPerPixel = MM_PER_INCH / dpi
  const left = Math.floor(box.xMm / mmPerPixel)
  const top = Math.floor(box.yMm / mmPerPixel)
  const widthPx = Math.max(1, Math.ceil((box.xMm + box.widthMm) / mmPerPixel) - left)
  const heightPx = Math.max(1, Math.ceil((box.yMm + box.heightMm) / mmPerPixel) - top)
  const view = [left, top, widthPx, heightPx].map(pixels => pixels * mmPerPixel).join(' ')
  const fitted = await Promise.all(
    art.shapes.map(shape => (shape.kind === 'image' ? fitPicture(shape, dpi) : shape)),
  )
  const svg =
    `<svg xmlns="http://www.w3.org/2000/svg" width="${widthPx}" height="${heightPx}" viewBox="${view}">` +
    `<g transform="rotate(${turn})">${artMarkup({ ...art, shapes: fitted })}</g></svg>`
  const drawn = new Resvg(svg, { font: { loadSystemFonts: false } }).render()
  return { rgba: drawn.pixels, widthPx: drawn.width, heightPx: drawn.height, left, top }
}

/** The box turned by 180° about the origin. */
function turnBox({ xMm, yMm, widthMm, heightMm }: Box): Box {
  return { xMm: -xMm - widthMm, yMm: -yMm - heightMm, widthMm, heightMm }
}
