import { type Pixels, rowBytes } from '../../src/files/png/pixels.js'
import type { Coverage } from '../pieces/pixels.js'

/** The pixels without the bytes that fill up each row. */
export function pixelBytes({ bytes, widthPx, heightPx, channels }: Pixels): Uint8Array {
  const row = widthPx * channels
  const stride = rowBytes(widthPx, channels)
  const result = new Uint8Array(row * heightPx)
  for (let y = 0; y < heightPx; y++) result.set(bytes.subarray(y * stride, y * stride + row), y * row)
  return result
}

/** How much darker than white each pixel is, in its first channel; white is passed over four bytes at a time. */
export function darknessOf({ widthPx: width, heightPx: height, channels, bytes }: Pixels): Coverage {
  const values = new Uint8Array(width * height)
  const fours = rowBytes(width, channels) / 4
  const words = new Uint32Array(bytes.buffer, bytes.byteOffset, fours * height)
  for (let y = 0; y < height; y++)
    for (let four = 0; four < fours; four++) {
      if (words[y * fours + four] === 0xffffffff) continue
      for (let byte = four * 4; byte < four * 4 + 4; byte++)
        if (byte % channels === 0 && byte < width * channels)
          values[y * width + byte / channels] = 255 - bytes[y * fours * 4 + byte]!
    }
  return { width, height, values }
}

/** One byte of each pixel: its red, of a picture in colours. In a plain loop, since a page has millions. */
export function firstOfEach(bytes: Uint8Array, channels: number): Uint8Array {
  const firsts = new Uint8Array(bytes.length / channels)
  for (let pixel = 0; pixel < firsts.length; pixel++) firsts[pixel] = bytes[pixel * channels]!
  return firsts
}
