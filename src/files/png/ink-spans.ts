/** Where shapes painted one over the other have ink, row by row. */
import type { PlacedSprites } from '../raster/raster.js'
import { runNumbers } from '../raster/sprite.js'

/** Ink that is nearer than so many pixels is one stretch: between two there is then always room for a run. */
const NEAR_PX = 16

/** For each row, from where to where there is ink, in pixels from the art's origin; of use until another art's are asked for. */
export interface Spans {
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
  readonly firsts: Int32Array
  /** From and to by turns. */
  readonly ends: Int32Array
}

/** Used again from art to art: what is made anew for each of hundreds lies about until it is collected. */
let runMemory = runsOf(1 << 12)
let rowMemory = rowsOf(1 << 10)

function runsOf(room: number) {
  return {
    room,
    begins: new Int32Array(room),
    reaches: new Int32Array(room),
    ends: new Int32Array(2 * room),
  }
}

function rowsOf(room: number) {
  return {
    room,
    firstRuns: new Int32Array(room),
    next: new Int32Array(room),
    firsts: new Int32Array(room),
  }
}

export function spansOf(sprites: PlacedSprites): Spans | undefined {
  const rows = runsByRow(sprites)
  if (rows === undefined) return undefined
  const { top, height } = rows
  const { begins, reaches, ends } = runMemory
  const { firstRuns, firsts } = rowMemory
  let count = 0
  let left = Infinity
  let right = -Infinity
  for (let row = 0; row < height; row++) {
    const first = count
    firsts[row] = first
    for (let run = firstRuns[row]!; run < firstRuns[row + 1]!; run++) {
      const from = begins[run]!
      const to = reaches[run]!
      const last = count - 1
      if (last > first && from <= ends[last]! + NEAR_PX) {
        if (to > ends[last]!) ends[last] = to
      } else {
        ends[count++] = from
        ends[count++] = to
      }
    }
    if (count === first) continue
    if (ends[first]! < left) left = ends[first]!
    if (ends[count - 1]! > right) right = ends[count - 1]!
  }
  firsts[height] = count
  return { left: left | 0, right: right | 0, top, bottom: top + height, firsts, ends }
}

/** The runs of all sprites by their rows, in a row from left to right; those of one sprite come so. Tells which rows they are. */
function runsByRow(sprites: PlacedSprites) {
  let top = Infinity
  let bottom = -Infinity
  let count = 0
  for (const { sprite, y } of sprites) {
    const { runs } = sprite
    if (runs.length === 0) continue
    count += runs.length / runNumbers
    top = Math.min(top, y + runs[0]!)
    bottom = Math.max(bottom, y + runs[runs.length - runNumbers]! + 1)
  }
  if (count === 0) return undefined
  const height = bottom - top
  if (count > runMemory.room) runMemory = runsOf(2 * count)
  if (height >= rowMemory.room) rowMemory = rowsOf(2 * height)
  const { begins, reaches } = runMemory
  const { firstRuns, next } = rowMemory
  firstRuns.fill(0, 0, height + 1)
  for (const { sprite, y } of sprites)
    for (let run = 0; run < sprite.runs.length; run += runNumbers)
      firstRuns[sprite.runs[run]! + y - top + 1]!++
  for (let row = 0; row < height; row++) firstRuns[row + 1]! += firstRuns[row]!
  next.set(firstRuns.subarray(0, height))
  for (const { sprite, x, y } of sprites) {
    const { runs } = sprite
    for (let run = 0; run < runs.length; run += runNumbers) {
      const row = runs[run]! + y - top
      const from = runs[run + 1]! + x
      let at = next[row]!++
      for (; at > firstRuns[row]! && begins[at - 1]! > from; at--) {
        begins[at] = begins[at - 1]!
        reaches[at] = reaches[at - 1]!
      }
      begins[at] = from
      reaches[at] = from + runs[run + 2]!
    }
  }
  return { top: top | 0, height: height | 0 }
}

/** The spans of two rows as one list, put into `all` from its beginning: how many numbers they are. */
export function joinSpans(
  { firsts, ends, top, bottom }: Spans,
  upper: number,
  lower: number,
  all: number[],
): number {
  const height = bottom - top
  let count = 0
  let a = firsts[Math.max(0, upper)]!
  const aEnd = upper < 0 ? a : firsts[upper + 1]!
  let b = firsts[Math.min(lower, height)]!
  const bEnd = lower >= height ? b : firsts[lower + 1]!
  while (a < aEnd || b < bEnd) {
    const isUpper = b >= bEnd || (a < aEnd && ends[a]! <= ends[b]!)
    const at = isUpper ? a : b
    if (isUpper) a += 2
    else b += 2
    const from = ends[at]!
    const to = ends[at + 1]!
    const last = count - 1
    if (last > 0 && from <= all[last]! + NEAR_PX) {
      if (to > all[last]!) all[last] = to
    } else {
      all[count++] = from
      all[count++] = to
    }
  }
  return count
}
