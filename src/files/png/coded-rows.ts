/** Rows of a page that follow one another, filtered and packed, put together from those of the arts that stand on them. */
import { blankPage, paintSprite } from '../raster/compose.js'
import type { PreparedSheet } from '../raster/raster.js'
import { runNumbers, type Sprite } from '../raster/sprite.js'
import type { BitString } from './bit-string.js'
import { ADLER, codeRow, rowsOfBytes } from './code-row.js'
import { rowBytes } from './pixels.js'
import { putByte, putNoughts } from './shared-code.js'
import type { PlacedCodes, StretchesByRow } from './stretches-by-row.js'

const FILTER_UP = 2

/** Rows of a page, the last one no longer of them, and what stands on them, so far from the first of them. */
export interface PageRows {
  readonly page: PreparedSheet
  readonly from: number
  readonly to: number
  readonly placed: readonly PlacedCodes[]
}

/** The two sums of Adler-32 (RFC 1950, §9) of so many bytes: what they add where none stood before. */
export interface ByteSums {
  readonly count: number
  readonly sum: number
  readonly sums: number
}

/** Of bytes and of those that follow them. */
export function sumsTogether(first: ByteSums, next: ByteSums): ByteSums {
  return {
    count: first.count + next.count,
    sum: (first.sum + next.sum) % ADLER,
    sums: (first.sums + next.count * first.sum + next.sums) % ADLER,
  }
}

/** Where two arts come too near to each other, and on the page's first row, over which there is no other, the rows are painted. */
export function codeRows(
  { page, from, to, placed }: PageRows,
  { firsts, places, arts, meets }: StretchesByRow,
  bits: BitString,
): ByteSums {
  const { widthPx, channels } = page
  const count = to - from
  const rowLength = widthPx * channels
  const painted = paintedRows(page)
  // Not minus nought, which is another kind of number.
  const firstOfPage = 0 - from
  let sum = 0
  let sums = 0
  let y = 0
  while (y < count) {
    let next = y
    while (next < count && (next === firstOfPage || meets[next] === 1)) next++
    if (next > y) {
      ;[sum, sums] = painted(bits, y + from, next + from, sum, sums)
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
      const left = numbers[place + 2]! + x * channels
      const right = numbers[place + 3]! + x * channels
      if (left > at) putNoughts(bits, left - at)
      bits.append(words, numbers[place + 4]!, numbers[place + 5]!)
      // Noughts leave the sum as it is, and add it to the sum of sums each time.
      sums += (right - at) * sum + numbers[place + 7]!
      sum += numbers[place + 6]!
      at = right
    }
    if (rowLength > at) {
      putNoughts(bits, rowLength - at)
      sums += (rowLength - at) * sum
    }
    sum %= ADLER
    sums %= ADLER
    y++
  }
  return { count: count * (rowLength + 1), sum, sums }
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
