import { type Box, mmToPixels } from '../../geometry.js'
import type { ImageShape } from '../../pieces/piece.js'
import { UnreadablePicture } from '../folder/file-problem.js'

/** Four times what a good camera takes; a small file may unpack to a gigabyte. */
const MOST_PIXELS = 100_000_000

/** Finer than any office printer shows. */
const PRINTED_DPI = 300

/** The part of a picture that is not white edge, in pixels of the picture when it stands upright. */
export interface PictureExtent {
  readonly leftPx: number
  readonly topPx: number
  readonly widthPx: number
  readonly heightPx: number
}

/** So much darker than white is no edge any more: a scanner's white is not quite white. 0 to 255. */
const EDGE_DARKNESS = 16

/** What is left of a picture without its white or clear edges; the whole of a white one. Undefined where it cannot be read. */
export async function measurePicture(bytes: Uint8Array): Promise<PictureExtent | undefined> {
  const { default: sharp } = await import('sharp')
  try {
    const { data, info } = await sharp(bytes, { limitInputPixels: MOST_PIXELS })
      .autoOrient()
      .flatten({ background: '#ffffff' })
      .toColourspace('b-w')
      .raw()
      .toBuffer({ resolveWithObject: true })
    return darkBox(data, info.width, info.height, info.channels)
  } catch {
    return undefined
  }
}

function darkBox(data: Uint8Array, width: number, height: number, channels: number): PictureExtent {
  let [left, top, right, bottom] = [width, height, -1, -1]
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      if (data[(y * width + x) * channels]! >= 255 - EDGE_DARKNESS) continue
      left = Math.min(left, x)
      right = Math.max(right, x)
      top = Math.min(top, y)
      bottom = Math.max(bottom, y)
    }
  return right < 0
    ? { leftPx: 0, topPx: 0, widthPx: width, heightPx: height }
    : { leftPx: left, topPx: top, widthPx: right - left + 1, heightPx: bottom - top + 1 }
}

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
 * The picture upright and without its edges, at most as fine as it can be printed in its box, without what the camera
 * wrote beside it: a JPEG where it was one, else a PNG. Undefined where it cannot be read.
 */
export async function printablePicture(
  shape: ImageShape,
  extent: PictureExtent,
): Promise<ImageShape | undefined> {
  const scaled = (await upright(shape))
    .extract({ left: extent.leftPx, top: extent.topPx, width: extent.widthPx, height: extent.heightPx })
    .resize(sizeIn(shape.box, PRINTED_DPI))
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
  const scaled = (await upright(shape)).resize(sizeIn(shape.box, dpi)).png({ compressionLevel: 1 })
  try {
    return { ...shape, bytes: await scaled.toBuffer(), mediaType: 'image/png' }
  } catch {
    throw new UnreadablePicture(`the picture of “${shape.description}” cannot be read`)
  }
}

async function upright({ bytes }: ImageShape) {
  const { default: sharp } = await import('sharp')
  return sharp(bytes, { limitInputPixels: MOST_PIXELS }).autoOrient()
}

function sizeIn({ widthMm, heightMm }: Box, dpi: number) {
  return {
    width: Math.max(1, Math.round(mmToPixels(widthMm, dpi))),
    height: Math.max(1, Math.round(mmToPixels(heightMm, dpi))),
    fit: 'inside',
    withoutEnlargement: true,
  } as const
}
