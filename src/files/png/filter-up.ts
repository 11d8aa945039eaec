import { type Pixels, rowBytes } from './pixels.js'

const filterTypeUp = 2

/** How many bytes the filtered rows of a picture take. */
export function filteredBytes({ widthPx, heightPx, channels }: Pixels): number {
  return heightPx * (widthPx * channels + 1)
}

/**
 * Fills `filtered` with the rows, each led by its filter type, each byte less the byte above it (PNG
 * Specification, §9.2). Rows are compared with the one above in words of four bytes, most of which are equal.
 */
export function filterUp({ bytes, widthPx, heightPx, channels }: Pixels, filtered: Uint8Array): void {
  const rowLength = widthPx * channels
  const stride = rowBytes(widthPx, channels)
  const rows = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  const words = new Uint32Array(bytes.buffer, bytes.byteOffset, bytes.byteLength / 4)
  filtered.fill(0)
  for (let y = 0; y < heightPx; y++) {
    const row = y * stride
    const out = y * (rowLength + 1)
    filtered[out] = filterTypeUp
    if (y === 0) filtered.set(rows.subarray(0, rowLength), 1)
    else if (rows.compare(rows, row - stride, row, row, row + stride) !== 0)
      for (let word = row / 4, above = word - stride / 4, x = 0; x < rowLength; word++, above++, x += 4) {
        if (words[word] === words[above]) continue
        const end = Math.min(x + 4, rowLength)
        for (let at = x; at < end; at++) filtered[out + 1 + at] = bytes[row + at]! - bytes[row - stride + at]!
      }
  }
}
