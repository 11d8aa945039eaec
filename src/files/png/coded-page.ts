import { blankPage, paintSprite } from '../raster/compose.js'
import type { PreparedSheet } from '../raster/raster.js'
import { runNumbers, type Sprite } from '../raster/sprite.js'
import { type BitString, bitString } from './bit-string.js'
import { codeRow, rowsOfBytes } from './code-row.js'
import { ADLER, type CodedArt, standingNumbers, stretchNumbers } from './coded-art.js'
import { rowBytes } from './pixels.js'
import { putByte, putEnd, putHead, putNoughts } from './shared-code.js'

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

/** Stretches of all arts by the row of the page, from left to right. */
interface StretchesByRow {
  readonly firsts: Int32Array
  /** Which of the arts, and where in its `stretches` the numbers of this one begin. */
  readonly arts: Int32Array
  readonly places: Int32Array
  /** 1 for a row in which two arts meet. */
  readonly meets: Uint8Array
}

/** Used again from page to page; a page of a hundred words has ten thousand stretches. */
let sorting = memoryFor(1 << 14)

function memoryFor(stretches: number) {
  return {
    stretches,
    arts: new Int32Array(stretches),
    places: new Int32Array(stretches),
    begins: new Int32Array(stretches),
    ends: new Int32Array(stretches),
  }
}

function stretchesByRow(
  { widthPx, heightPx, channels }: PreparedSheet,
  placed: readonly PlacedCodes[],
): StretchesByRow | undefined {
  const firsts = new Int32Array(heightPx + 2)
  for (const { art, y } of placed) {
    const { firsts: ofArt } = art
    const top = y + art.top
    const end = Math.min(art.rows, heightPx - top)
    for (let row = Math.max(0, -top); row < end; row++)
      firsts[top + row + 1]! += ofArt[row + 1]! - ofArt[row]!
  }
  for (let row = 0; row < heightPx; row++) firsts[row + 1]! += firsts[row]!
  const count = firsts[heightPx]!
  if (count > sorting.stretches) sorting = memoryFor(2 * count)
  const { arts, places, begins, ends } = sorting
  const next = firsts.slice()
  const meets = new Uint8Array(heightPx)
  const width = widthPx * channels
  // From left to right, so that in a row most come after those that are there.
  const byLeft = [...placed.keys()].sort(
    (a, b) => leftOf(placed[a]!, channels) - leftOf(placed[b]!, channels),
  )
  for (const which of byLeft) {
    const { art, x, y } = placed[which]!
    const shift = x * channels
    const { stretches, firsts: ofArt } = art
    const top = y + art.top
    const last = Math.min(art.rows, heightPx - top)
    const first = Math.max(0, -top)
    if (art.left + shift < 0 || art.right + shift > width)
      meets.fill(1, top + first, top + Math.max(first, last))
    for (let row = first; row < last; row++) {
      const on = top + row
      const low = firsts[on]!
      const end = ofArt[row + 1]! * stretchNumbers
      for (let place = ofArt[row]! * stretchNumbers; place < end; place += stretchNumbers) {
        const begin = stretches[place]! + shift
        const reach = stretches[place + 1]! + shift
        const free = next[on]!++
        let at = free
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
        ends[at] = reach
        // Of two that overlap, the later one comes to stand beside the other, or beside one that overlaps it too.
        if ((at > low && ends[at - 1]! > begin) || (at < free && begins[at + 1]! < reach)) meets[on] = 1
      }
    }
  }
  meetStanding(placed, channels, meets)
  let met = 0
  for (const meet of meets) met += meet
  return met > heightPx / MOST_PAINTED ? undefined : { firsts, arts, places, meets }
}

function leftOf({ art, x }: PlacedCodes, channels: number): number {
  return art.left + x * channels
}

/** Where more than one row in so many would be painted, all are. */
const MOST_PAINTED = 3

/** Tells the rows in which something stands within reach of what goes on from row to row in another art. */
function meetStanding(placed: readonly PlacedCodes[], channels: number, meets: Uint8Array): void {
  // From the top down, so that each is held against those alone that begin before it ends.
  const fromTop = placed.toSorted((one, other) => one.y + one.art.top - other.y - other.art.top)
  for (const [index, one] of fromTop.entries()) {
    const bottom = one.y + one.art.top + one.art.rows
    for (let next = index + 1; next < fromTop.length; next++) {
      const other = fromTop[next]!
      if (other.y + other.art.top >= bottom) break
      if (!overlapSideways(one, other, channels)) continue
      meetStandingOf(one, other, channels, meets)
      meetStandingOf(other, one, channels, meets)
    }
  }
}

/** Whether their boxes do. */
function overlapSideways(one: PlacedCodes, other: PlacedCodes, channels: number): boolean {
  const [ofOne, ofOther] = [leftOf(one, channels), leftOf(other, channels)]
  return ofOne < ofOther + other.art.right - other.art.left && ofOther < ofOne + one.art.right - one.art.left
}

function meetStandingOf(one: PlacedCodes, other: PlacedCodes, channels: number, meets: Uint8Array): void {
  const { standing } = one.art
  const shift = one.x * channels
  const { art, x, y } = other
  const [from, to] = [art.top + y, art.top + art.rows + y]
  for (let at = 0; at < standing.length; at += standingNumbers) {
    const left = standing[at]! + shift
    const right = standing[at + 1]! + shift
    if (art.left + x * channels >= right || art.right + x * channels <= left) continue
    const top = Math.max(standing[at + 2]! + one.y, from)
    const bottom = Math.min(standing[at + 3]! + one.y, to)
    if (top < bottom) meetWithin(other, channels, { left, right, from: top, to: bottom }, meets)
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
      for (const { sprite, x, y } of sprites) {
        const runs = runsWithin(sprite, from - 1 - y, to - y)
        if (runs.length > 0) paintSprite(strip, { ...sprite, runs }, x, y - from + 1)
      }
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
