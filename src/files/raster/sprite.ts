/**
 * A small drawing kept as the runs of pixels that have ink, so that composing a page touches ink alone.
 * Colours are premultiplied with their opacity, as resvg gives them.
 */
export interface Sprite {
  /** 1 where every pixel is a grey, else 3. */
  readonly channels: 1 | 3
  /**
   * Five numbers a run: row and first column from the sprite's origin, length in pixels, index of its first pixel
   * in `opacity` and `color`, and 1 where all its pixels are that one, opaque, else 0.
   */
  readonly runs: Int32Array
  /** Opacity of the pixels that are kept, 1 to 255. */
  readonly opacity: Uint8Array
  /** Colour of the pixels that are kept, `channels` bytes each. */
  readonly color: Uint8Array
  /** Where each row has one run, which is the same as that of the row above: an upright line is thousands of rows high. */
  readonly rowsAlike?: boolean
}

export const runNumbers = 5
/** A run of one opaque colour pays from this length on. */
const shortestSolid = 8

/** Pixels as resvg gives them: red, green, blue, opacity; `left` and `top` place the first from the origin. */
export interface DrawnPixels {
  readonly rgba: Uint8Array
  readonly widthPx: number
  readonly heightPx: number
  readonly left: number
  readonly top: number
}

export const blankSprite: Sprite = {
  channels: 1,
  runs: new Int32Array(0),
  opacity: new Uint8Array(0),
  color: new Uint8Array(0),
}

/** Hundreds of words make a page: what is gathered of one is gathered into the same memory. */
let keptPixels = new Int32Array(2 ** 14)
let gatheredRuns = new Int32Array(2 ** 12)

export function spriteFromPixels({ rgba, widthPx, heightPx, left, top }: DrawnPixels): Sprite {
  // Whole pixels can be read as words only from an address divisible by four.
  const aligned = rgba.byteOffset % 4 === 0 ? rgba : new Uint8Array(rgba)
  // With a sign: numbers that need no memory of their own.
  const words = new Int32Array(aligned.buffer, aligned.byteOffset, aligned.length / 4)
  let kept = keptPixels
  let runs = gatheredRuns
  let keptEnd = 0
  let runsEnd = 0
  for (let y = 0; y < heightPx; y++) {
    // A row has no more runs than every other pixel.
    kept = withRoom(kept, keptEnd, widthPx)
    runs = withRoom(runs, runsEnd, (widthPx + 1) * runNumbers)
    for (let x = 0; x < widthPx; ) {
      const at = y * widthPx + x
      const length = words[at] === 0 ? blankLength(words, at, widthPx - x) : 0
      x += length
      if (x === widthPx) break
      const start = at + length
      const same = sameLength(words, start, widthPx - x)
      const solid = same >= shortestSolid && aligned[start * 4 + 3] === 255
      const inked = solid ? same : mixedLength(words, aligned, start, widthPx - x)
      runs[runsEnd++] = top + y
      runs[runsEnd++] = left + x
      runs[runsEnd++] = inked
      runs[runsEnd++] = keptEnd
      runs[runsEnd++] = solid ? 1 : 0
      for (let pixel = start; pixel < start + (solid ? 1 : inked); pixel++) kept[keptEnd++] = pixel
      x += inked
    }
  }
  keptPixels = kept
  gatheredRuns = runs
  return spriteOfPixels(aligned, kept.subarray(0, keptEnd), runs.slice(0, runsEnd))
}

/** The same numbers up to `end`, with room for as many more. */
function withRoom(numbers: Int32Array<ArrayBuffer>, end: number, more: number): Int32Array<ArrayBuffer> {
  if (end + more <= numbers.length) return numbers
  const larger = new Int32Array(2 * (end + more))
  larger.set(numbers.subarray(0, end))
  return larger
}

function spriteOfPixels(rgba: Uint8Array, kept: Int32Array, runs: Int32Array): Sprite {
  const opacity = new Uint8Array(kept.length)
  const grey = new Uint8Array(kept.length)
  let isGrey = true
  for (let to = 0; to < kept.length; to++) {
    const from = kept[to]! * 4
    const opaque = rgba[from + 3]!
    const red = rgba[from]!
    opacity[to] = opaque
    // Never above its opacity: see below.
    grey[to] = Math.min(opaque, red)
    if (
      (rgba[from + 1] !== red || rgba[from + 2] !== red) &&
      (grey[to] !== Math.min(opaque, rgba[from + 1]!) || grey[to] !== Math.min(opaque, rgba[from + 2]!))
    )
      isGrey = false
  }
  return isGrey
    ? { channels: 1, runs, opacity, color: grey }
    : { channels: 3, runs, opacity, color: coloursOf(rgba, kept) }
}

function coloursOf(rgba: Uint8Array, kept: Int32Array): Uint8Array {
  const colours = new Uint8Array(kept.length * 3)
  for (let to = 0; to < kept.length; to++) {
    const from = kept[to]! * 4
    const opaque = rgba[from + 3]!
    // Where resvg scales a picture, rounding leaves a colour one above its opacity: on white that would be 256, black.
    for (let channel = 0; channel < 3; channel++)
      colours[to * 3 + channel] = Math.min(opaque, rgba[from + channel]!)
  }
  return colours
}

/** Pixels wholly transparent are all noughts, their colour being premultiplied. */
function blankLength(words: Int32Array, from: number, most: number): number {
  let at = from
  const end = from + most
  while (at + 3 < end && (words[at]! | words[at + 1]! | words[at + 2]! | words[at + 3]!) === 0) at += 4
  while (at < end && words[at] === 0) at++
  return at - from
}

function sameLength(words: Int32Array, from: number, most: number): number {
  let at = from + 1
  const end = from + most
  const word = words[from]
  while (at < end && words[at] === word) at++
  return at - from
}

/** To the end of the ink, or to where a long run of one opaque colour begins. */
function mixedLength(words: Int32Array, rgba: Uint8Array, from: number, most: number): number {
  let length = 1
  while (length < most && words[from + length] !== 0) {
    const same = sameLength(words, from + length, most - length)
    if (same >= shortestSolid && rgba[(from + length) * 4 + 3] === 255) break
    length += same
  }
  return length
}
