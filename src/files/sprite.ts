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

export function spriteFromPixels({ rgba, widthPx, heightPx, left, top }: DrawnPixels): Sprite {
  const runs: number[] = []
  let inked = 0
  for (let y = 0, at = 3; y < heightPx; y++)
    for (let x = 0, start = -1; x <= widthPx; x++) {
      const ink = x < widthPx && rgba[at] !== 0
      if (x < widthPx) at += 4
      if (ink && start < 0) start = x
      if (!ink && start >= 0) {
        runs.push(top + y, left + start, x - start, inked)
        inked += x - start
        start = -1
      }
    }
  const opacity = new Uint8Array(inked)
  const rgb = new Uint8Array(inked * 3)
  let grey = true
  for (let run = 0; run < runs.length; run += 4) {
    let from = ((runs[run]! - top) * widthPx + runs[run + 1]! - left) * 4
    let to = runs[run + 3]!
    for (const end = to + runs[run + 2]!; to < end; to++, from += 4) {
      const [red, green, blue] = [rgba[from]!, rgba[from + 1]!, rgba[from + 2]!]
      opacity[to] = rgba[from + 3]!
      rgb[to * 3] = red
      rgb[to * 3 + 1] = green
      rgb[to * 3 + 2] = blue
      if (red !== green || green !== blue) grey = false
    }
  }
  const color = grey ? Uint8Array.from({ length: inked }, (_, pixel) => rgb[pixel * 3]!) : rgb
  return { channels: grey ? 1 : 3, runs: Int32Array.from(runs), opacity, color }
}
