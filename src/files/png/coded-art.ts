import { blankPage, paintSprite } from '../raster/compose.js'
import type { PlacedSprite, PlacedSprites } from '../raster/raster.js'
import { runNumbers } from '../raster/sprite.js'
import { bitString } from './bit-string.js'
import { codeRow, type RowsOfBytes, rowsOfBytes, sameUntil } from './code-row.js'
import { joinSpans, spansOf } from './ink-spans.js'
import { rowBytes } from './pixels.js'

/**
 * An art alone on white paper, as it is written in a page: each row less the row above it, in codes that are the same for all
 * pages. Where nothing else stands in the pixels that it takes, its rows are a page's rows.
 */
export interface CodedArt {
  /** From the art's origin, the first row with ink, and how many rows are another than the one above. */
  readonly top: number
  readonly rows: number
  /** Bytes from the art's origin, the outermost that are taken. */
  readonly left: number
  readonly right: number
  /** `stretchNumbers` for each, row by row, in a row from left to right. */
  readonly stretches: Int32Array
  readonly words: Int32Array
  /** What is taken by ink that goes on as it was in the row above, as an upright line does: `standingNumbers` for each. */
  readonly standing: Int32Array
}

/**
 * From where to where, in bytes from the art's origin, nothing else may stand; the bytes that differ from those above;
 * the first word of their codes, and how many bits; their sum, and the sum of their sums (Adler-32); their row from the art's origin.
 */
export const stretchNumbers = 9

/** From where to where in bytes, from which row to which (the first that is no longer of it), all from the art's origin. */
export const standingNumbers = 4

/** Hundreds of words make a page, each a few kilobytes: what they are painted and written in is used again. */
const KEPT_MEMORY = 2 ** 20
const bits = bitString()
let memory: Uint8Array = new Uint8Array(0)

/** Shapes painted one over the other, each so far from the art's origin; undefined where none has ink. */
export function codeArt(sprites: PlacedSprites, channels: 1 | 3): CodedArt | undefined {
  const first = sprites[0]!
  const isUpright =
    sprites.length === 1 && first.sprite.rowsAlike === true && first.sprite.runs.length > 2 * runNumbers
  return isUpright ? codeUpright(first, channels) : codeSprites(sprites, channels)
}

/** It is coded as two rows: the second is as all below it are. */
function codeUpright({ sprite, x, y }: PlacedSprite, channels: 1 | 3): CodedArt | undefined {
  const twoRows = { ...sprite, runs: sprite.runs.subarray(0, 2 * runNumbers) }
  const low = codeSprites([{ sprite: twoRows, x, y }], channels)
  if (low === undefined) return undefined
  const more = sprite.runs.length / runNumbers - 2
  const { stretches, standing } = low
  // Where it is white on white, it is nowhere another than what is above.
  if (stretches.length > 0) stretches[stretches.length - 1]! += more
  standing[standing.length - 1]! += more
  return { ...low, rows: low.rows + more }
}

function codeSprites(sprites: PlacedSprites, channels: 1 | 3): CodedArt | undefined {
  const spans = spansOf(sprites)
  if (spans === undefined) return undefined
  const { left, right, top, bottom } = spans
  const height = bottom - top
  // A white row above and one below, so that every row has one over it.
  const page = blankPage(right - left, height + 2, channels, memory)
  if (page.bytes.length <= KEPT_MEMORY && page.bytes.length > memory.length) memory = page.bytes
  for (const { sprite, x, y } of sprites) paintSprite(page, sprite, x - left, y + 1 - top)
  const rows = rowsOfBytes(page.bytes, rowBytes(page.widthPx, channels))
  const canvas: Canvas = { rows, channels, leftPx: left, topPx: top }
  const standing = standingInk()
  bits.clear()
  gathered = 0
  const taken: number[] = []
  for (let y = 0; y <= height; y++) {
    const count = joinSpans(spans, y - 1, y, taken)
    for (let index = 0; index < count; index += 2) {
      const from = taken[index]! - left
      const to = taken[index + 1]! - left
      if (addStretch(canvas, y + 1, from, to)) continue
      standing.add((from + left) * channels, (to + left) * channels, y + top)
    }
  }
  const end = bits.nextWord()
  return {
    top,
    rows: height + 1,
    left: left * channels,
    right: right * channels,
    stretches: stretches.slice(0, gathered),
    words: bits.words().slice(0, end),
    standing: new Int32Array(standing.numbers),
  }
}

/** Gathers what goes on from row to row; told row by row, from left to right. */
function standingInk() {
  const numbers: number[] = []
  /** Where those of the row before begin, and those of this one. */
  let above: number[] = []
  let here: number[] = []
  let row = 0
  let at = 0
  return {
    numbers,
    add: (from: number, to: number, y: number): void => {
      if (y !== row) {
        above = y === row + 1 ? here : []
        here = []
        row = y
        at = 0
      }
      while (at < above.length && numbers[above[at]!]! < from) at++
      const known = above[at]
      if (known !== undefined && numbers[known] === from && numbers[known + 1] === to) {
        numbers[known + 3] = y + 1
        here.push(known)
        return
      }
      here.push(numbers.length)
      numbers.push(from, to, y, y + 1)
    },
  }
}

/** Stretches of the art that is being coded are gathered into the same memory. */
let stretches = new Int32Array(2 ** 12)
let gathered = 0

/** One stretch of a row of the canvas, from and to in pixels; false where it is as the row above. */
function addStretch(canvas: Canvas, y: number, fromPx: number, toPx: number): boolean {
  const { rows, channels, leftPx, topPx } = canvas
  const { bytes, words, stride } = rows
  const row = y * stride
  const last = row + toPx * channels
  const first = sameUntil(bytes, words, row + fromPx * channels, last, stride)
  if (first >= last) return false
  let end = last
  while (bytes[end - 1] === bytes[end - 1 - stride]) end--
  const word = bits.nextWord()
  const begin = bits.length()
  sums[0] = 0
  sums[1] = 0
  codeRow(bits, rows, row, first - row, end - row, sums)
  const shift = leftPx * channels
  if (gathered + stretchNumbers > stretches.length) {
    const larger = new Int32Array(2 * stretches.length)
    larger.set(stretches)
    stretches = larger
  }
  stretches[gathered++] = fromPx * channels + shift
  stretches[gathered++] = toPx * channels + shift
  stretches[gathered++] = first - row + shift
  stretches[gathered++] = end - row + shift
  stretches[gathered++] = word
  stretches[gathered++] = bits.length() - begin
  stretches[gathered++] = sums[0]!
  stretches[gathered++] = sums[1]!
  stretches[gathered++] = y - 1 + topPx
  return true
}

const sums = new Int32Array(2)

interface Canvas {
  readonly rows: RowsOfBytes
  readonly channels: 1 | 3
  /** Where it lies from the art's origin, without the white row above. */
  readonly leftPx: number
  readonly topPx: number
}
