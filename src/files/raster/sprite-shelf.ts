import type { PathShape, Shape } from '../../pieces/piece.js'
import type { Sprite } from './sprite.js'

export interface SpriteShelf {
  /** The sprite of a shape that looks the same, or a new one. */
  readonly once: (shape: Shape, draw: () => Promise<Sprite>) => DrawnOrDrawing
}

/** Most shapes of a page were drawn before, and are at hand without waiting. */
export type DrawnOrDrawing = Sprite | Promise<Sprite>

/** What was put on the shelf since it was last cleared. */
interface Board {
  readonly byShape: Map<Shape, DrawnOrDrawing>
  readonly byLook: Map<string, DrawnOrDrawing>
  bytes: number
}

/**
 * Sprites by shape and by look. Once those used of late take more than `keptBytes`, those that were not used since the
 * last time this happened are let go.
 */
export function spriteShelf(keptBytes: number): SpriteShelf {
  let late = newBoard()
  let earlier = newBoard()
  const keep = (shape: Shape, look: string | undefined, sprite: DrawnOrDrawing): DrawnOrDrawing => {
    const board = late
    const put = (on: DrawnOrDrawing): void => {
      board.byShape.set(shape, on)
      if (look !== undefined) board.byLook.set(look, on)
    }
    const putDrawn = (drawn: Sprite): void => {
      put(drawn)
      const { runs, opacity, color } = drawn
      board.bytes += runs.byteLength + opacity.byteLength + color.byteLength + (look?.length ?? 0)
      if (board !== late || board.bytes <= keptBytes) return
      earlier = late
      late = newBoard()
    }
    if (!(sprite instanceof Promise)) {
      putDrawn(sprite)
      return sprite
    }
    put(sprite)
    // What fails is told to whoever asked for it.
    sprite.then(putDrawn, () => undefined)
    return sprite
  }
  return {
    once: (shape, draw) => {
      const onBoard = late.byShape.get(shape)
      if (onBoard !== undefined) return onBoard
      const look = shape.kind === 'path' ? lookOf(shape) : undefined
      const alike = look === undefined ? undefined : late.byLook.get(look)
      if (alike !== undefined) {
        late.byShape.set(shape, alike)
        return alike
      }
      const known = earlier.byShape.get(shape) ?? (look === undefined ? undefined : earlier.byLook.get(look))
      return keep(shape, look, known ?? draw())
    },
  }
}

/** All that its pixels depend on; paths are long, and are best taken as they are. */
function lookOf({ d, fill, stroke }: PathShape): string {
  return stroke === undefined ? `${fill} ${d}` : `${fill} ${JSON.stringify(stroke)} ${d}`
}

function newBoard(): Board {
  return { byShape: new Map(), byLook: new Map(), bytes: 0 }
}
