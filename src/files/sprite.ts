/**
 * A small drawing kept as the runs of pixels that have ink, so that composing a page touches ink alone.
 * Colours are premultiplied with their opacity, as resvg gives them.
 */
export interface Sprite {
  /** 1 where every pixel is a grey, else 3. */
  readonly channels: 1 | 3
  /** Four numbers a run: row and first column from the sprite's origin, length in pixels, index of its first pixel. */
  readonly runs: Int32Array
  /** Opacity of each inked pixel, 1 to 255. */
  readonly opacity: Uint8Array
  /** Colour of each inked pixel, `channels` bytes each. */
  readonly color: Uint8Array
}

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

export function spriteFromPixels(drawn: DrawnPixels): Sprite {
  const runs = inkedRuns(drawn)
  const last = runs.length - 4
  const inked = last < 0 ? 0 : runs[last + 2]! + runs[last + 3]!
  const { rgba, widthPx, left, top } = drawn
  const opacity = new Uint8Array(inked)
  const rgb = new Uint8Array(inked * 3)
  let grey = true
  for (let run = 0; run < runs.length; run += 4) {
    let from = ((runs[run]! - top) * widthPx + runs[run + 1]! - left) * 4
    let to = runs[run + 3]!
    for (const end = to + runs[run + 2]!; to < end; to++, from += 4) {
      const red = rgba[from]!
      const green = rgba[from + 1]!
      const blue = rgba[from + 2]!
      opacity[to] = rgba[from + 3]!
      rgb[to * 3] = red
      rgb[to * 3 + 1] = green
      rgb[to * 3 + 2] = blue
      if (red !== green || green !== blue) grey = false
    }
  }
  return grey
    ? { channels: 1, runs, opacity, color: firstOfThree(rgb) }
    : { channels: 3, runs, opacity, color: rgb }
}

/** Runs of pixels that are not wholly transparent; these are all noughts, their colour being premultiplied. */
function inkedRuns({ rgba, widthPx, heightPx, left, top }: DrawnPixels): Int32Array {
  // Whole words can be read only from an address divisible by four.
  const aligned = rgba.byteOffset % 4 === 0 ? rgba : new Uint8Array(rgba)
  const words = new Uint32Array(aligned.buffer, aligned.byteOffset, aligned.length / 4)
  const runs: number[] = []
  let inked = 0
  for (let y = 0, at = 0; y < heightPx; y++)
    for (let x = 0; x < widthPx; ) {
      while (x < widthPx && words[at] === 0) {
        x++
        at++
      }
      const start = x
      while (x < widthPx && words[at] !== 0) {
        x++
        at++
      }
      if (x === start) continue
      runs.push(top + y, left + start, x - start, inked)
      inked += x - start
    }
  return Int32Array.from(runs)
}

function firstOfThree(rgb: Uint8Array): Uint8Array {
  const grey = new Uint8Array(rgb.length / 3)
  for (let pixel = 0; pixel < grey.length; pixel++) grey[pixel] = rgb[pixel * 3]!
  return grey
}
