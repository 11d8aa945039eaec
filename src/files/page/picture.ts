import { mmToPixels } from '../../geometry.js'
import type { ImageShape } from '../../pieces/piece.js'
import { UnreadablePicture } from '../folder/file-problem.js'

/** Finer than any office printer shows. */
const PRINTED_DPI = 300

/**
 * The picture upright, at most as fine as it can be printed in its box, without what the camera wrote beside it: a
 * JPEG where it was one, else a PNG. Undefined where it cannot be read.
 */
export async function printablePicture(shape: ImageShape): Promise<ImageShape | undefined> {
  const scaled = await scaledPicture(shape, PRINTED_DPI)
  const bytes =
    shape.mediaType === 'image/jpeg'
      ? scaled.jpeg({ quality: 92, chromaSubsampling: '4:4:4' }).toBuffer()
      : scaled.png().toBuffer()
  return bytes.then(
    made => ({ ...shape, bytes: made }),
    () => undefined,
  )
}

/**
 * The picture scaled down to the pixels that its box has on the page, upright as the camera meant it. resvg
 * scales a large photograph by sampling, which leaves jagged edges; sharp averages.
 */
export async function fitPicture(shape: ImageShape, dpi: number): Promise<ImageShape> {
  const scaled = (await scaledPicture(shape, dpi)).png({ compressionLevel: 1 })
  try {
    return { ...shape, bytes: await scaled.toBuffer(), mediaType: 'image/png' }
  } catch {
    throw new UnreadablePicture(`the picture of “${shape.description}” cannot be read`)
  }
}

async function scaledPicture(shape: ImageShape, dpi: number) {
  const { default: sharp } = await import('sharp')
  return sharp(shape.bytes)
    .autoOrient()
    .resize({
      width: Math.max(1, Math.round(mmToPixels(shape.box.widthMm, dpi))),
      height: Math.max(1, Math.round(mmToPixels(shape.box.heightMm, dpi))),
      fit: 'inside',
      withoutEnlargement: true,
    })
}
