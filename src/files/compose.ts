import type { Pixels } from './png/encode-png.js'
import type { Sprite } from './sprite.js'

/** A page of white paper. */
export function blankPage(widthPx: number, heightPx: number, channels: 1 | 3): Pixels {
  return { widthPx, heightPx, channels, bytes: new Uint8Array(widthPx * heightPx * channels).fill(255) }
}

/** Paints the sprite over the page, its origin at (`originX`, `originY`); what lies off the page is cut off. */
export function paintSprite(page: Pixels, sprite: Sprite, originX: number, originY: number): void {
  const { runs } = sprite
  for (let run = 0; run < runs.length; run += 4) {
    const y = originY + runs[run]!
    if (y < 0 || y >= page.heightPx) continue
    const x = originX + runs[run + 1]!
    const skipped = Math.max(0, -x)
    const length = Math.min(runs[run + 2]!, page.widthPx - x) - skipped
    if (length <= 0) continue
    const to = y * page.widthPx + x + skipped
    const from = runs[run + 3]! + skipped
    if (page.channels === 1) paintGreyRun(page.bytes, to, sprite, from, length)
    else paintColorRun(page.bytes, to, sprite, from, length)
  }
}

/** Fills a rectangle of whole pixels with black. */
export function paintRectangle(page: Pixels, left: number, top: number, right: number, bottom: number): void {
  const { bytes, widthPx, heightPx, channels } = page
  const [from, to] = [Math.max(0, left), Math.min(widthPx, right)]
  if (from >= to) return
  for (let y = Math.max(0, top); y < Math.min(heightPx, bottom); y++)
    bytes.fill(0, (y * widthPx + from) * channels, (y * widthPx + to) * channels)
}

function paintGreyRun(page: Uint8Array, to: number, sprite: Sprite, from: number, length: number): void {
  const { opacity, color } = sprite
  for (let index = 0; index < length; index++)
    page[to + index] = color[from + index]! + seenThrough(page[to + index]!, opacity[from + index]!)
}

function paintColorRun(page: Uint8Array, to: number, sprite: Sprite, from: number, length: number): void {
  const { opacity, color, channels } = sprite
  for (let index = 0; index < length; index++)
    for (let channel = 0; channel < 3; channel++) {
      const at = (to + index) * 3 + channel
      const ink = channels === 1 ? color[from + index]! : color[(from + index) * 3 + channel]!
      page[at] = ink + seenThrough(page[at]!, opacity[from + index]!)
    }
}

/** What ink of this opacity leaves of the colour below it: below × (255 − opacity) / 255, rounded. */
function seenThrough(below: number, opacity: number): number {
  const product = below * (255 - opacity) + 128
  return (product + (product >> 8)) >> 8
}
