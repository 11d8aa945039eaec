import { mmToPixels } from '../geometry.js'
import type { ImageShape } from '../pieces/piece.js'
import { UnreadablePicture } from './file-problem.js'

/**
 * The picture scaled down to the pixels that its box has on the page, upright as the camera meant it. resvg
 * scales a large photograph by sampling, which leaves jagged edges; sharp averages.
 */
export async function fitPicture(shape: ImageShape, dpi: number): Promise<ImageShape> {
  const { default: sharp } = await import('sharp')
  const scaled = sharp(shape.bytes)
    .autoOrient()
    .resize({
      width: Math.max(1, Math.round(mmToPixels(shape.box.widthMm, dpi))),
      height: Math.max(1, Math.round(mmToPixels(shape.box.heightMm, dpi))),
      fit: 'inside',
      withoutEnlargement: true,
    })
    .png({ compressionLevel: 1 })
  try {
    return { ...shape, bytes: await scaled.toBuffer(), mediaType: 'image/png' }
  } catch {
    throw new UnreadablePicture(`the picture of “${shape.description}” cannot be read`)
  }
}
