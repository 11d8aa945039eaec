/** Which rows of a page have what of its arts, and where two arts come too near to each other to be put together from codes. */
import type { PreparedSheet } from '../raster/raster.js'
import { type CodedArt, standingNumbers, stretchNumbers } from './coded-art.js'

/** An art in the codes of all pages, and where its origin stands, in pixels. */
export interface PlacedCodes {
  readonly art: CodedArt
  readonly x: number
  readonly y: number
}

/** Stretches of all arts by the row of the page, or of some of its rows, from left to right; of use until others are asked for. */
export interface StretchesByRow {
  readonly firsts: Int32Array
  /** Which of the arts, and where in its `stretches` the numbers of this one begin. */
  readonly arts: Int32Array
  readonly places: Int32Array
  /** 1 for a row in which two arts meet. */
  readonly meets: Uint8Array
  /** How many such rows there are. */
  readonly met: number
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

/** Which of a stretch's numbers says its row. */
const ROW = stretchNumbers - 1

export function stretchesByRow(
  { widthPx, heightPx, channels }: Pick<PreparedSheet, 'widthPx' | 'heightPx' | 'channels'>,
  placed: readonly PlacedCodes[],
): StretchesByRow {
  const firsts = new Int32Array(heightPx + 2)
  for (const { art, y } of placed) {
    const { stretches } = art
    for (let place = firstFrom(stretches, 0 - y) + ROW; place < stretches.length; place += stretchNumbers) {
      const on = stretches[place]! + y
      if (on >= heightPx) break
      firsts[on + 1]!++
    }
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
    const { stretches } = art
    const top = y + art.top
    if (art.left + shift < 0 || art.right + shift > width)
      meets.fill(1, Math.max(0, top), Math.max(0, top + art.rows))
    for (let place = firstFrom(stretches, 0 - y); place < stretches.length; place += stretchNumbers) {
      const on = stretches[place + ROW]! + y
      if (on >= heightPx) break
      const low = firsts[on]!
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
  meetStanding(placed, channels, meets)
  let met = 0
  for (const meet of meets) met += meet
  return { firsts, arts, places, meets, met }
}

function leftOf({ art, x }: PlacedCodes, channels: number): number {
  return art.left + x * channels
}

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
  const { stretches, standing } = art
  const end = Math.min(to, meets.length)
  for (
    let place = firstFrom(stretches, Math.max(0, from) - y);
    place < stretches.length;
    place += stretchNumbers
  ) {
    const row = stretches[place + ROW]! + y
    if (row >= end) break
    if (stretches[place]! + shift < right && stretches[place + 1]! + shift > left) meets[row] = 1
  }
  for (let at = 0; at < standing.length; at += standingNumbers) {
    if (standing[at]! + shift >= right || standing[at + 1]! + shift <= left) continue
    const low = Math.max(0, from, standing[at + 2]! + y)
    const high = Math.min(meets.length, to, standing[at + 3]! + y)
    if (low < high) meets.fill(1, low, high)
  }
}

/** Where the first stretch of this row or a later one begins; they come row by row. */
function firstFrom(stretches: Int32Array, row: number): number {
  let low = 0
  let high = stretches.length / stretchNumbers
  while (low < high) {
    const middle = (low + high) >> 1
    if (stretches[middle * stretchNumbers + ROW]! < row) low = middle + 1
    else high = middle
  }
  return low * stretchNumbers
}
