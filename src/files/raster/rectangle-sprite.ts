import { runNumbers, type Sprite } from './sprite.js'

/** Rectangles of whole pixels in one grey, 0 for black to 255 for white: what cut lines are. Each is made once. */
export function rectangleSprites(): (widthPx: number, heightPx: number, grey: number) => Sprite {
  const made = new Map<string, Sprite>()
  return (widthPx, heightPx, grey) => {
    const key = `${widthPx} ${heightPx} ${grey}`
    const sprite = made.get(key) ?? rectangleSprite(widthPx, heightPx, grey)
    made.set(key, sprite)
    return sprite
  }
}

function rectangleSprite(widthPx: number, heightPx: number, grey: number): Sprite {
  const rows = widthPx > 0 ? Math.max(0, heightPx) : 0
  const runs = new Int32Array(rows * runNumbers)
  for (let row = 0, run = 0; row < rows; row++, run += runNumbers) {
    runs[run] = row
    runs[run + 2] = widthPx
    runs[run + 4] = 1
  }
  return { channels: 1, runs, opacity: Uint8Array.of(255), color: Uint8Array.of(grey), rowsAlike: true }
}
