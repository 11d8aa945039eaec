import { blankPage, paintSprite } from '../raster/compose.js'
import type { PlacedSprite, PreparedSheet } from '../raster/raster.js'
import { runNumbers } from '../raster/sprite.js'
import { type BitString, bitString } from './bit-string.js'
import { codeRow, rowsOfBytes } from './code-row.js'
import { ADLER, type CodedArt, standingNumbers, stretchNumbers } from './coded-art.js'
import { rowBytes } from './pixels.js'
import { putByte, putEnd, putHead, putRepeats } from './shared-code.js'

/** An art in the codes of all pages, and where its origin stands, in pixels. */
export interface PlacedCodes {
  readonly art: CodedArt
  readonly x: number
  readonly y: number
}

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
  const zeros = (count: number): void => {
    putByte(bits, 0)
    if (count > 1) putRepeats(bits, 0, count - 1)
    sums += count * sum
  }
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
    for (let index = firsts[y]!; index < firsts[y + 1]!; index++) {
      const { art, x } = placed[arts[index]!]!
      const { stretches: numbers, words } = art
      const place = places[index]! * stretchNumbers
      const from = numbers[place + 2]! + x * channels
      const to = numbers[place + 3]! + x * channels
      if (from > at) zeros(from - at)
      bits.append(words, numbers[place + 4]!, numbers[place + 5]!)
      sums += (to - from) * sum + numbers[place + 7]!
      sum += numbers[place + 6]!
      at = to
    }
    if (rowLength > at) zeros(rowLength - at)
    sum %= ADLER
    sums %= ADLER
    y++
  }
  putEnd(bits)
  return zlibStream(bits, sum, sums)
}

/** Stretches of all arts by the row of the page, from left to right. */
interface StretchesByRow {
  readonly firsts: Int32Array
  /** Which of the arts, and which stretch of it. */
  readonly arts: Int32Array
  readonly places: Int32Array
  /** 1 for a row in which two arts meet. */
  readonly meets: Uint8Array
}

function stretchesByRow(
  { widthPx, heightPx, channels }: PreparedSheet,
  placed: readonly PlacedCodes[],
): StretchesByRow | undefined {
  const firsts = new Int32Array(heightPx + 2)
  for (const { art, y } of placed) {
    const end = Math.min(art.rows, heightPx - y - art.top)
    for (let row = Math.max(0, -y - art.top); row < end; row++)
      firsts[y + art.top + row + 1]! += art.firsts[row + 1]! - art.firsts[row]!
  }
  for (let row = 0; row < heightPx; row++) firsts[row + 1]! += firsts[row]!
  const count = firsts[heightPx]!
  const arts = new Int32Array(count)
  const places = new Int32Array(count)
  const begins = new Int32Array(count)
  const ends = new Int32Array(count)
  const next = firsts.slice()
  const meets = new Uint8Array(heightPx)
  const width = widthPx * channels
  for (let which = 0; which < placed.length; which++) {
    const { art, x, y } = placed[which]!
    const shift = x * channels
    const { stretches } = art
    const last = Math.min(art.rows, heightPx - y - art.top)
    const first = Math.max(0, -y - art.top)
    if (art.left + shift < 0 || art.right + shift > width)
      meets.fill(1, y + art.top + first, y + art.top + Math.max(first, last))
    for (let row = first; row < last; row++) {
      const on = y + art.top + row
      const low = firsts[on]!
      for (let place = art.firsts[row]!; place < art.firsts[row + 1]!; place++) {
        const begin = stretches[place * stretchNumbers]! + shift
        let at = next[on]!++
        while (at > low && begins[at - 1]! > begin) {
          arts[at] = arts[at - 1]!
          places[at] = places[at - 1]!
          begins[at] = begins[at - 1]!
          ends[at] = ends[at - 1]!
          at--
        }
        arts[at] = which
        places[at] = place
        begins[at] = begin
        ends[at] = stretches[place * stretchNumbers + 1]! + shift
      }
    }
  }
  for (let row = 0; row < heightPx; row++) {
    let last = 0
    for (let at = firsts[row]!; at < firsts[row + 1]!; at++) {
      if (begins[at]! < last) meets[row] = 1
      if (ends[at]! > last) last = ends[at]!
    }
  }
  meetStanding(placed, channels, meets)
  let met = 0
  for (const meet of meets) met += meet
  return met > heightPx / MOST_PAINTED ? undefined : { firsts, arts, places, meets }
}

/** Where more than one row in so many would be painted, all are. */
const MOST_PAINTED = 3

/** Tells the rows in which something stands within reach of what goes on from row to row in another art. */
function meetStanding(placed: readonly PlacedCodes[], channels: number, meets: Uint8Array): void {
  for (const one of placed) {
    const { standing } = one.art
    const shift = one.x * channels
    for (let at = 0; at < standing.length; at += standingNumbers) {
      const left = standing[at]! + shift
      const right = standing[at + 1]! + shift
      const top = standing[at + 2]! + one.y
      const bottom = standing[at + 3]! + one.y
      for (const other of placed) {
        if (other === one) continue
        const { art, x, y } = other
        if (art.left + x * channels >= right || art.right + x * channels <= left) continue
        const from = Math.max(top, art.top + y)
        const to = Math.min(bottom, art.top + art.rows + y)
        if (from < to) meetWithin(other, channels, { left, right, from, to }, meets)
      }
    }
  }
}

function meetWithin(
  { art, x, y }: PlacedCodes,
  channels: number,
  { left, right, from, to }: { left: number; right: number; from: number; to: number },
  meets: Uint8Array,
): void {
  const shift = x * channels
  const { firsts, stretches, standing } = art
  for (let row = Math.max(0, from); row < Math.min(to, meets.length); row++) {
    const own = row - y - art.top
    for (let place = firsts[own]!; place < firsts[own + 1]!; place++)
      if (
        stretches[place * stretchNumbers]! + shift < right &&
        stretches[place * stretchNumbers + 1]! + shift > left
      )
        meets[row] = 1
  }
  for (let at = 0; at < standing.length; at += standingNumbers) {
    if (standing[at]! + shift >= right || standing[at + 1]! + shift <= left) continue
    const low = Math.max(0, from, standing[at + 2]! + y)
    const high = Math.min(meets.length, to, standing[at + 3]! + y)
    if (low < high) meets.fill(1, low, high)
  }
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
      for (const placed of sprites)
        if (reaches(placed, from - 1, to)) paintSprite(strip, placed.sprite, placed.x, placed.y - from + 1)
    // What stands above the first row counts as noughts.
    if (from === 0) strip.bytes.fill(0, 0, stride)
    const rows = rowsOfBytes(strip.bytes, stride)
    const both = Float64Array.of(sumBefore, sumsBefore)
    for (let row = 1; row <= to - from; row++) {
      putByte(bits, FILTER_UP)
      both[0]! += FILTER_UP
      both[1]! += both[0]!
      codeRow(bits, rows, row * stride, 0, rowLength, both)
      both[0]! %= ADLER
      both[1]! %= ADLER
    }
    return [both[0]!, both[1]!]
  }
}

/** Whether any of its runs lies in these rows. Runs come row by row. */
function reaches({ sprite: { runs }, y }: PlacedSprite, from: number, to: number): boolean {
  return runs.length > 0 && runs[0]! + y < to && runs[runs.length - runNumbers]! + y >= from
}

/** Deflate with a window of 32 KB, packed fast (RFC 1950, §2.2). */
const HEAD = [0x78, 0x01]

function zlibStream(bits: BitString, sum: number, sums: number): Buffer {
  const length = Math.ceil(bits.length() / 8)
  const words = bits.words()
  const bytes = Buffer.from(words.buffer, words.byteOffset, words.byteLength)
  const stream = Buffer.alloc(HEAD.length + length + 4)
  stream.set(HEAD)
  bytes.copy(stream, HEAD.length, 0, length)
  stream.writeUInt32BE((sums * 65536 + sum) >>> 0, HEAD.length + length)
  return stream
}
