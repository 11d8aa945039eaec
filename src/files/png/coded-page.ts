import { blankPage, paintSprite } from '../raster/compose.js'
import type { PreparedSheet } from '../raster/raster.js'
import { runNumbers, type Sprite } from '../raster/sprite.js'
import { type BitString, bitString } from './bit-string.js'
import { ADLER, codeRow, rowsOfBytes } from './code-row.js'
import { rowBytes } from './pixels.js'
import { putByte, putEnd, putHead, putNoughts } from './shared-code.js'
import { type PlacedCodes, stretchesByRow } from './stretches-by-row.js'

const FILTER_UP = 2

/**
 * A page's rows, filtered and packed, put together from those of its arts. Where two arts come too near to each other, and on the
 * first row, over which there is no other, the rows are painted; undefined where that would be most of the page.
 */
export function codePage(
  page: PreparedSheet,
  placed: readonly PlacedCodes[],
  bits: BitString = bitString(),
): Buffer | undefined {
  const stretches = stretchesByRow(page, placed)
  if (stretches === undefined) return undefined
  const { firsts, places, arts, meets } = stretches
  const { widthPx, heightPx, channels } = page
  bits.clear()
  const rowLength = widthPx * channels
  const painted = paintedRows(page)
  putHead(bits)
  let sum = 1
  let sums = 0
  let y = 0
  while (y < heightPx) {
    let next = y
    while (next < heightPx && (next === 0 || meets[next] === 1)) next++
    if (next > y) {
      ;[sum, sums] = painted(bits, y, next, sum, sums)
      y = next
      continue
    }
    putByte(bits, FILTER_UP)
    sum += FILTER_UP
    sums += sum
    let at = 0
    const end = firsts[y + 1]!
    for (let index = firsts[y]!; index < end; index++) {
      const { art, x } = placed[arts[index]!]!
      const { stretches: numbers, words } = art
      const place = places[index]!
      const from = numbers[place + 2]! + x * channels
      const to = numbers[place + 3]! + x * channels
      if (from > at) putNoughts(bits, from - at)
      bits.append(words, numbers[place + 4]!, numbers[place + 5]!)
      // Noughts leave the sum as it is, and add it to the sum of sums each time.
      sums += (to - at) * sum + numbers[place + 7]!
      sum += numbers[place + 6]!
      at = to
    }
    if (rowLength > at) {
      putNoughts(bits, rowLength - at)
      sums += (rowLength - at) * sum
    }
    sum %= ADLER
    sums %= ADLER
    y++
  }
  putEnd(bits)
  return zlibStream(bits, sum, sums)
}

type PaintedRows = (
  bits: BitString,
  from: number,
  to: number,
  sum: number,
  sums: number,
) => [sum: number, sums: number]

/** Rows of the page painted with the one above them, and packed as they are. */
function paintedRows({ widthPx, channels, drawings }: PreparedSheet): PaintedRows {
  const rowLength = widthPx * channels
  const stride = rowBytes(widthPx, channels)
  return (bits, from, to, sumBefore, sumsBefore) => {
    const strip = blankPage(widthPx, to - from + 1, channels)
    for (const sprites of drawings)
      for (const { sprite, x, y } of sprites) {
        const runs = runsWithin(sprite, from - 1 - y, to - y)
        if (runs.length > 0) paintSprite(strip, { ...sprite, runs }, x, y - from + 1)
      }
    // What stands above the first row counts as noughts.
    if (from === 0) strip.bytes.fill(0, 0, stride)
    const rows = rowsOfBytes(strip.bytes, stride)
    const both = Int32Array.of(sumBefore, sumsBefore)
    for (let row = 1; row <= to - from; row++) {
      putByte(bits, FILTER_UP)
      both[0]! += FILTER_UP
      both[1]! += both[0]!
      codeRow(bits, rows, row * stride, 0, rowLength, both)
    }
    return [both[0]!, both[1]!]
  }
}

/** The runs in these rows; they come row by row. */
function runsWithin({ runs }: Sprite, from: number, to: number): Int32Array {
  const count = runs.length / runNumbers
  if (count === 0 || runs[0]! >= to || runs[(count - 1) * runNumbers]! < from) return noRuns
  return runs.subarray(firstIn(runs, from) * runNumbers, firstIn(runs, to) * runNumbers)
}

const noRuns = new Int32Array(0)

/** The first run of this row or a later one. */
function firstIn(runs: Int32Array, row: number): number {
  let low = 0
  let high = runs.length / runNumbers
  while (low < high) {
    const middle = (low + high) >> 1
    if (runs[middle * runNumbers]! < row) low = middle + 1
    else high = middle
  }
  return low
}

/** Deflate with a window of 32 KB, packed fast (RFC 1950, §2.2). */
const HEAD = [0x78, 0x01]

function zlibStream(bits: BitString, sum: number, sums: number): Buffer {
  const length = Math.ceil(bits.length() / 8)
  const words = bits.words()
  const bytes = Buffer.from(words.buffer, words.byteOffset, words.byteLength)
  const stream = Buffer.allocUnsafe(HEAD.length + length + 4)
  stream.set(HEAD)
  bytes.copy(stream, HEAD.length, 0, length)
  stream.writeUInt32BE((sums * 65536 + sum) >>> 0, HEAD.length + length)
  return stream
}
