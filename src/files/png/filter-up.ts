import type { Pixels } from './encode-png.js'

const filterTypeUp = 2

/** The rows, each led by its filter type, each byte less the byte above it (PNG Specification, §9.2). */
export function filterUp({ bytes, widthPx, heightPx, channels }: Pixels): Uint8Array {
  const stride = widthPx * channels
  const rows = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  const filtered = new Uint8Array(heightPx * (stride + 1))
  for (let y = 0; y < heightPx; y++) {
    const row = y * stride
    const above = row - stride
    let out = y * (stride + 1)
    filtered[out++] = filterTypeUp
    if (y === 0) filtered.set(rows.subarray(0, stride), out)
    else if (rows.compare(rows, above, row, row, row + stride) !== 0)
      for (let x = 0; x < stride; x++) filtered[out + x] = bytes[row + x]! - bytes[above + x]!
  }
  return filtered
}
