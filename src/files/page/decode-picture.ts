import { mmToPixels, type Size } from '../../geometry.js'

/** Four times what a good camera takes; a small file may unpack to a gigabyte. */
export const MOST_PIXELS = 100_000_000

/** Finer than any office printer shows. */
export const PRINTED_DPI = 300

/** The size of a picture without its white edges, in pixels of its file when it stands upright. */
export interface PictureExtent {
  readonly widthPx: number
  readonly heightPx: number
}

/** A picture upright and without its white edges, as pixels, at most as fine as any of its boxes can show. */
export interface DecodedPicture extends PictureExtent {
  readonly pixels: Uint8Array
  readonly raw: { readonly width: number; readonly height: number; readonly channels: 1 | 2 | 3 | 4 }
}

/** So much darker than white is no edge any more: a scanner's white is not quite white. 0 to 255. */
const EDGE_DARKNESS = 16

/** Pixels are kept for rooms of up to 102 mm, so that the cards of a plan share them; for larger ones two times, four times … as many. */
const STEP_PX = 1200

/** How fine a picture is kept, as pixels of its longer side, for it to be printed in this room and in any smaller one. */
export function finenessFor({ widthMm, heightMm }: Size): number {
  const needed = mmToPixels(Math.max(widthMm, heightMm), PRINTED_DPI)
  return STEP_PX * 2 ** Math.max(0, Math.ceil(Math.log2(needed / STEP_PX)))
}

/** The picture without its white or clear edges; the whole of a white one. Undefined where it cannot be read. */
export async function decodePicture(bytes: Uint8Array, mostPx: number): Promise<DecodedPicture | undefined> {
  const { default: sharp } = await import('sharp')
  try {
    const whole = await sharp(bytes, { limitInputPixels: MOST_PIXELS })
      .autoOrient()
      .raw({ depth: 'uchar' })
      .toBuffer({ resolveWithObject: true })
    const { width, height, channels } = whole.info
    const inked = inkedBox(whole.data, { width, height, channels })
    const kept = await sharp(whole.data, { raw: { width, height, channels } })
      .extract(inked)
      .resize({ width: mostPx, height: mostPx, fit: 'inside', withoutEnlargement: true })
      .raw()
      .toBuffer({ resolveWithObject: true })
    const raw = { width: kept.info.width, height: kept.info.height, channels: kept.info.channels }
    return { widthPx: inked.width, heightPx: inked.height, pixels: kept.data, raw }
  } catch {
    return undefined
  }
}

/** Pixels in rows from the top, of one channel (grey), two (grey and how dense), three or four (colours alike). */
function inkedBox(data: Uint8Array, { width, height, channels }: DecodedPicture['raw']) {
  const colours = channels > 2 ? 3 : 1
  const lightest = 255 - EDGE_DARKNESS
  const isInk = (at: number) => {
    const light =
      colours === 1 ? data[at]! : 0.2126 * data[at]! + 0.7152 * data[at + 1]! + 0.0722 * data[at + 2]!
    if (channels === colours) return light < lightest
    return 255 - ((255 - light) * data[at + colours]!) / 255 < lightest
  }
  let [left, top, right, bottom] = [width, height, -1, -1]
  for (let y = 0, at = 0; y < height; y++)
    for (let x = 0; x < width; x++, at += channels) {
      if (!isInk(at)) continue
      left = Math.min(left, x)
      right = Math.max(right, x)
      top = Math.min(top, y)
      bottom = Math.max(bottom, y)
    }
  return right < 0
    ? { left: 0, top: 0, width, height }
    : { left, top, width: right - left + 1, height: bottom - top + 1 }
}
