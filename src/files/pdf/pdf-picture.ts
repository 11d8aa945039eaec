import { deflateSync } from 'node:zlib'
import type { ImageShape } from '../../pieces/piece.js'
import { toDecimal } from '../page/decimal.js'
import { fitPicture } from '../page/picture.js'

export interface PdfPicture {
  readonly name: string
  readonly reference: PDFKit.PDFKitReference
  /** Draws the picture whole in the middle of its box. */
  readonly operators: string
}

/** Finer than any office printer shows. */
const pictureDpi = 300

/** Puts the teacher's picture into the document: as JPEG where it is opaque, else with its opacity beside it. */
export async function addPicture(
  doc: PDFKit.PDFDocument,
  shape: ImageShape,
  name: string,
): Promise<PdfPicture> {
  const { default: sharp } = await import('sharp')
  const fitted = sharp((await fitPicture(shape, pictureDpi)).bytes)
  const { data, info } = await fitted
    .clone()
    .ensureAlpha()
    .toColourspace('srgb')
    .raw()
    .toBuffer({ resolveWithObject: true })
  const size = {
    Type: 'XObject',
    Subtype: 'Image',
    Width: info.width,
    Height: info.height,
    BitsPerComponent: 8,
  }
  const pixels = info.width * info.height
  const channel = (of: number): Uint8Array =>
    Uint8Array.from({ length: pixels }, (_, at) => data[at * 4 + of]!)
  const opacity = channel(3)
  const opaque = opacity.every(value => value === 255)
  const color = opaque
    ? await fitted
        .flatten({ background: '#ffffff' })
        .toColourspace('srgb')
        .jpeg({ quality: 92, chromaSubsampling: '4:4:4' })
        .toBuffer()
    : deflateSync(
        Uint8Array.from({ length: pixels * 3 }, (_, at) => data[Math.floor(at / 3) * 4 + (at % 3)]!),
      )
  const mask = opaque ? undefined : doc.ref({ ...size, ColorSpace: 'DeviceGray', Filter: 'FlateDecode' })
  mask?.end(deflateSync(opacity))
  const reference = doc.ref({
    ...size,
    ColorSpace: 'DeviceRGB',
    Filter: opaque ? 'DCTDecode' : 'FlateDecode',
    ...(mask && { SMask: mask }),
  })
  reference.end(color)
  return { name, reference, operators: pictureOperators(shape, name, info.width / info.height) }
}

function pictureOperators({ box }: ImageShape, name: string, aspect: number): string {
  const width = Math.min(box.widthMm, box.heightMm * aspect)
  const height = width / aspect
  const left = box.xMm + (box.widthMm - width) / 2
  const bottom = box.yMm + (box.heightMm + height) / 2
  // A picture's own square has y upwards; the page's y goes downwards.
  const place = [width, 0, 0, -height, left, bottom].map(toDecimal).join(' ')
  return `q ${place} cm /${name} Do Q`
}
