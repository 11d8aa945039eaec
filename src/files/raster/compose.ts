import { type Pixels, rowBytes } from '../png/pixels.js'
import { runNumbers, type Sprite } from './sprite.js'

/** A page of white paper, in the memory given where that is large enough. */
export function blankPage(
  widthPx: number,
  heightPx: number,
  channels: 1 | 3,
  memory: Uint8Array = new Uint8Array(0),
): Pixels {
  const length = rowBytes(widthPx, channels) * heightPx
  const bytes = memory.length < length ? new Uint8Array(length) : memory.subarray(0, length)
  return { widthPx, heightPx, channels, bytes: bytes.fill(255) }
}

/** Paints the sprite over the page, its origin at (`originX`, `originY`); what lies off the page is cut off. */
export function paintSprite(page: Pixels, sprite: Sprite, originX: number, originY: number): void {
  const { runs } = sprite
  const stride = rowBytes(page.widthPx, page.channels)
  for (let run = 0; run < runs.length; run += runNumbers) {
    const y = originY + runs[run]!
    if (y < 0 || y >= page.heightPx) continue
    const x = originX + runs[run + 1]!
    // Not minus nought, which is another kind of number.
    const skipped = x < 0 ? -x : 0
    const length = Math.min(runs[run + 2]!, page.widthPx - x) - skipped
    if (length <= 0) continue
    const to = y * stride + (x + skipped) * page.channels
    const solid = runs[run + 4] === 1
    const from = runs[run + 3]! + (solid ? 0 : skipped)
    if (page.channels === 1) paintGreyRun(page.bytes, to, sprite, from, length, solid)
    else paintColorRun(page.bytes, to, sprite, from, length, solid)
  }
}

function paintGreyRun(
  page: Uint8Array,
  to: number,
  { opacity, color }: Sprite,
  from: number,
  length: number,
  solid: boolean,
): void {
  if (solid) page.fill(color[from]!, to, to + length)
  else
    for (let at = to, pixel = from; at < to + length; at++, pixel++)
      page[at] = color[pixel]! + seenThrough(page[at]!, opacity[pixel]!)
}

function paintColorRun(
  page: Uint8Array,
  to: number,
  { opacity, color, channels }: Sprite,
  from: number,
  length: number,
  solid: boolean,
): void {
  for (let index = 0; index < length; index++) {
    const pixel = solid ? from : from + index
    for (let channel = 0; channel < 3; channel++) {
      const at = to + index * 3 + channel
      const ink = channels === 1 ? color[pixel]! : color[pixel * 3 + channel]!
      page[at] = ink + seenThrough(page[at]!, opacity[pixel]!)
    }
  }
}

/** What ink of this opacity leaves of the colour below it: below × (255 − opacity) / 255, rounded. */
function seenThrough(below: number, opacity: number): number {
  const product = below * (255 - opacity) + 128
  return (product + (product >> 8)) >> 8
}
