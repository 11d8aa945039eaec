import type { PlacedSprite, PlacedSprites } from '../raster/raster.js'
import { runNumbers, type Sprite } from '../raster/sprite.js'

/** In pixels; the right and bottom ones are no longer of it. */
interface InkBounds {
  readonly left: number
  readonly top: number
  readonly right: number
  readonly bottom: number
}

/** From the sprite's origin. */
const bounds = new WeakMap<Sprite, InkBounds | undefined>()

/**
 * The sprites of an art, parted into those that come near to one another: the lines of a page of text stand apart, letters and the
 * marks under them together. Each part keeps the order in which it is painted; what has no ink is in none.
 */
export function standApart(sprites: PlacedSprites): readonly PlacedSprites[] {
  if (sprites.length === 1) return [sprites]
  const parts: { readonly members: Set<number>; box: InkBounds }[] = []
  for (const [index, placed] of sprites.entries()) {
    const own = boundsOnPage(placed)
    if (own === undefined) continue
    let part = { members: new Set([index]), box: own }
    // What is joined reaches further, so it may come near to what was passed by.
    for (let at = parts.length - 1; at >= 0; at--) {
      const other = parts[at]!
      if (!areNear(part.box, other.box)) continue
      part = { members: new Set([...other.members, ...part.members]), box: around(part.box, other.box) }
      parts.splice(at, 1)
      at = parts.length
    }
    parts.push(part)
  }
  return parts.map(({ members }) => [...members].sort((a, b) => a - b).map(index => sprites[index]!))
}

function boundsOnPage({ sprite, x, y }: PlacedSprite): InkBounds | undefined {
  const own = boundsOf(sprite)
  return own && { left: own.left + x, top: own.top + y, right: own.right + x, bottom: own.bottom + y }
}

/** A row's codes are of what differs from the row above, so ink reaches one row further down. */
function areNear(a: InkBounds, b: InkBounds): boolean {
  return a.left < b.right && b.left < a.right && a.top <= b.bottom && b.top <= a.bottom
}

function around(a: InkBounds, b: InkBounds): InkBounds {
  return {
    left: Math.min(a.left, b.left),
    top: Math.min(a.top, b.top),
    right: Math.max(a.right, b.right),
    bottom: Math.max(a.bottom, b.bottom),
  }
}

function boundsOf(sprite: Sprite): InkBounds | undefined {
  if (!bounds.has(sprite)) bounds.set(sprite, measured(sprite))
  return bounds.get(sprite)
}

/** Runs come row by row, and in a row from left to right. */
function measured({ runs }: Sprite): InkBounds | undefined {
  if (runs.length === 0) return undefined
  let left = Infinity
  let right = -Infinity
  for (let run = 0; run < runs.length; run += runNumbers) {
    if (runs[run + 1]! < left) left = runs[run + 1]!
    if (runs[run + 1]! + runs[run + 2]! > right) right = runs[run + 1]! + runs[run + 2]!
  }
  return { left, top: runs[0]!, right, bottom: runs[runs.length - runNumbers]! + 1 }
}
