import { type Pixels, rowBytes } from '../../src/files/png/pixels.js'

/** The pixels without the bytes that fill up each row. */
export function pixelBytes({ bytes, widthPx, heightPx, channels }: Pixels): Uint8Array {
  const row = widthPx * channels
  const stride = rowBytes(widthPx, channels)
  const result = new Uint8Array(row * heightPx)
  for (let y = 0; y < heightPx; y++) result.set(bytes.subarray(y * stride, y * stride + row), y * row)
  return result
}
