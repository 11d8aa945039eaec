import type { Shape } from '../../pieces/piece.js'
import { fitPicture } from '../page/picture.js'
import { drawShape } from './draw-shape.js'
import { blankSprite, type Sprite, spriteFromPixels } from './sprite.js'

export interface SpriteStore {
  /** The shape's pixels; drawn the first time it is asked for. */
  spriteOf(shape: Shape, turn: 0 | 180): Promise<Sprite>
}

/**
 * Keeps what was drawn at one resolution: a shape that looks the same is drawn once, whether the same word
 * stands on thirty boards or the same frame was made anew for each.
 */
export function createSpriteStore(dpi: number): SpriteStore {
  const stores = { 0: newShelf(), 180: newShelf() }

  async function draw(shape: Shape, turn: 0 | 180): Promise<Sprite> {
    const fitted = shape.kind === 'image' ? await fitPicture(shape, dpi) : shape
    const pixels = drawShape(fitted, turn, dpi)
    return pixels === undefined ? blankSprite : spriteFromPixels(pixels)
  }

  return {
    spriteOf(shape, turn) {
      const { byShape, byLook } = stores[turn]
      const known = byShape.get(shape)
      if (known) return known
      const look = shape.kind === 'path' ? JSON.stringify(shape) : undefined
      const sprite = (look === undefined ? undefined : byLook.get(look)) ?? draw(shape, turn)
      byShape.set(shape, sprite)
      if (look !== undefined) byLook.set(look, sprite)
      return sprite
    },
  }
}

interface Shelf {
  readonly byShape: Map<Shape, Promise<Sprite>>
  readonly byLook: Map<string, Promise<Sprite>>
}

function newShelf(): Shelf {
  return { byShape: new Map(), byLook: new Map() }
}
