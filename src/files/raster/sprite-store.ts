import type { Shape } from '../../pieces/piece.js'
import { fitPicture } from '../page/picture.js'
import { drawShape } from './draw-shape.js'
import { blankSprite, type Sprite, spriteFromPixels } from './sprite.js'
import { spriteShelf } from './sprite-shelf.js'

export interface SpriteStore {
  /** The shape's pixels; drawn the first time it is asked for. */
  spriteOf(shape: Shape, turn: 0 | 180): Promise<Sprite>
}

/** As much of what was drawn as is kept, twice: a page's own shapes take a few megabytes. */
const KEPT_BYTES = 16 * 2 ** 20

/**
 * Keeps what was drawn at one resolution: a shape that looks the same is drawn once, whether the same word stands on
 * thirty boards or the same frame was made anew for each. Of a set with thousands of words it keeps what was used last;
 * the rest is drawn again where it is asked for again.
 */
export function createSpriteStore(dpi: number, keptBytes = KEPT_BYTES): SpriteStore {
  const shelves = { 0: spriteShelf(keptBytes), 180: spriteShelf(keptBytes) }

  async function draw(shape: Shape, turn: 0 | 180): Promise<Sprite> {
    const fitted = shape.kind === 'image' ? await fitPicture(shape, dpi) : shape
    const pixels = drawShape(fitted, turn, dpi)
    return pixels === undefined ? blankSprite : spriteFromPixels(pixels)
  }

  return { spriteOf: (shape, turn) => shelves[turn].once(shape, () => draw(shape, turn)) }
}
