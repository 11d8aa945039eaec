import { type Box, mmToPixels } from '../../geometry.js'
import type { ImageShape } from '../../pieces/piece.js'
import { type DecodedPicture, MOST_PIXELS, type PictureExtent, PRINTED_DPI } from './decode-picture.js'
import { UnreadablePicture } from './unreadable-picture.js'

/** No picture is made smaller than by this to match the others: a slender one among round ones stays readable. */
const LEAST_SHARE = 0.7

/**
 * Boxes in which pictures look alike in size, each in the middle of its own: all cover the same area, as near as their
 * rooms allow. The picture that covers least when it fills its room decides, but none shrinks below seven tenths.
 */
export function alikeInSize(
  pictures: readonly { readonly room: Box; readonly extent: PictureExtent }[],
): readonly Box[] {
  const full = pictures.map(({ room, extent }) => filling(room, extent.widthPx / extent.heightPx))
  const least = Math.min(...full.map(({ widthMm, heightMm }) => widthMm * heightMm))
  return full.map(({ xMm, yMm, widthMm, heightMm }) => {
    const share = Math.min(1, Math.max(LEAST_SHARE, Math.sqrt(least / (widthMm * heightMm))))
    return {
      xMm: xMm + (widthMm * (1 - share)) / 2,
      yMm: yMm + (heightMm * (1 - share)) / 2,
      widthMm: widthMm * share,
      heightMm: heightMm * share,
    }
  })
}

/** The largest box of this shape in the middle of the room. */
function filling(room: Box, aspect: number): Box {
  const widthMm = Math.min(room.widthMm, room.heightMm * aspect)
  const heightMm = widthMm / aspect
  return {
    xMm: room.xMm + (room.widthMm - widthMm) / 2,
    yMm: room.yMm + (room.heightMm - heightMm) / 2,
    widthMm,
    heightMm,
  }
}

/**
 * The picture at most as fine as it can be printed in the shape's box, without what the camera wrote beside it: a JPEG
 * where it was one, else a PNG.
 */
export async function printablePicture(
  shape: ImageShape,
  { pixels, raw }: DecodedPicture,
): Promise<ImageShape> {
  const { default: sharp } = await import('sharp')
  const scaled = sharp(pixels, { raw }).resize(sizeIn(shape.box, PRINTED_DPI))
  const bytes =
    shape.mediaType === 'image/jpeg' ? scaled.jpeg({ quality: 92, chromaSubsampling: '4:4:4' }) : scaled.png()
  return { ...shape, bytes: await bytes.toBuffer() }
}

/**
 * The picture scaled down to the pixels that its box has on the page, upright as the camera meant it. resvg
 * scales a large photograph by sampling, which leaves jagged edges; sharp averages.
 */
export async function fitPicture(shape: ImageShape, dpi: number): Promise<ImageShape> {
  const { default: sharp } = await import('sharp')
  const scaled = sharp(shape.bytes, { limitInputPixels: MOST_PIXELS })
    .autoOrient()
    .resize(sizeIn(shape.box, dpi))
    .png({ compressionLevel: 1 })
  try {
    return { ...shape, bytes: await scaled.toBuffer(), mediaType: 'image/png' }
  } catch {
    throw new UnreadablePicture(`the picture of “${shape.description}” cannot be read`)
  }
}

function sizeIn({ widthMm, heightMm }: Box, dpi: number) {
  return {
    width: Math.max(1, Math.round(mmToPixels(widthMm, dpi))),
    height: Math.max(1, Math.round(mmToPixels(heightMm, dpi))),
    fit: 'inside',
    withoutEnlargement: true,
  } as const
}
