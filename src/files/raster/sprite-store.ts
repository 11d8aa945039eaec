import type { Shape } from '../../pieces/piece.js'
import { fitPicture } from '../page/picture.js'
import { drawShape } from './draw-shape.js'
import { blankSprite, type Sprite, spriteFromPixels } from './sprite.js'
import { type DrawnOrDrawing, spriteShelf } from './sprite-shelf.js'

export interface SpriteStore {
  /** The shape's pixels; drawn the first time it is asked for. */
  spriteOf(shape: Shape, turn: 0 | 180): DrawnOrDrawing
}

/** As much of what was drawn as is kept, twice: a page's own shapes take a few megabytes. */
const KEPT_BYTES = 6 * 2 ** 20

/**
 * After as much as this the event loop gets its turn: resvg's own memory of what it drew is given back in that turn alone, so
 * that a page of running text would else be held three times over.
 */
const BYTES_A_TURN = 4 * 2 ** 20

/**
 * Keeps what was drawn at one resolution: a shape that looks the same is drawn once, whether the same word stands on
 * thirty boards or the same frame was made anew for each. Of a set with thousands of words it keeps what was used last;
 * the rest is drawn again where it is asked for again.
 */
export function createSpriteStore(dpi: number, keptBytes = KEPT_BYTES): SpriteStore {
  const shelves = { 0: spriteShelf(keptBytes), 180: spriteShelf(keptBytes) }

  let bytes = 0

  async function draw(shape: Shape, turn: 0 | 180): Promise<Sprite> {
    const fitted = shape.kind === 'image' ? await fitPicture(shape, dpi) : shape
    if (bytes > BYTES_A_TURN) {
      bytes = 0
      await new Promise(resolve => setImmediate(resolve))
    }
    const pixels = drawShape(fitted, turn, dpi)
    bytes += pixels?.rgba.byteLength ?? 0
    return pixels === undefined ? blankSprite : spriteFromPixels(pixels)
  }

  return { spriteOf: (shape, turn) => shelves[turn].once(shape, () => draw(shape, turn)) }
}
