import { type Pixels, rowBytes } from './pixels.js'
import type { RunPacker } from './run-packer.js'

const filterTypeUp = 2

/**
 * Packs a picture's rows, each led by its filter type, each byte less the byte above it (PNG Specification, §9.2). Sheets are
 * mostly white with upright edges, which this turns into runs of noughts. Rows are compared with the one above whole, and where
 * they differ in words of four bytes, most of which are equal.
 */
export function packRows({ bytes, widthPx, heightPx, channels }: Pixels, packer: RunPacker): Buffer {
  const rowLength = widthPx * channels
  const stride = rowBytes(widthPx, channels)
  const rows = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  const words = new Int32Array(bytes.buffer, bytes.byteOffset, bytes.byteLength / 4)
  for (let y = 0; y < heightPx; y++) {
    const row = y * stride
    let value = filterTypeUp
    let count = 1
    let x = 0
    // What stands above the first row counts as noughts.
    if (y > 0 && rows.compare(rows, row - stride, row, row, row + stride) === 0) {
      packer.run(value, count)
      value = 0
      count = x = rowLength
    }
    while (x < rowLength) {
      const from = x
      if (y > 0) {
        let word = (row + x) >> 2
        const end = (row + stride) >> 2
        const up = stride >> 2
        while (word < end && words[word] === words[word - up]) word++
        x = Math.min((word << 2) - row, rowLength)
      }
      if (x > from) {
        if (value === 0) count += x - from
        else {
          packer.run(value, count)
          value = 0
          count = x - from
        }
      }
      for (const end = Math.min(x + 4, rowLength); x < end; x++) {
        const byte = (bytes[row + x]! - (y === 0 ? 0 : bytes[row - stride + x]!)) & 255
        if (byte === value) count++
        else {
          packer.run(value, count)
          value = byte
          count = 1
        }
      }
    }
    packer.run(value, count)
  }
  return packer.take()
}
