import type { PlacedSprite, PlacedSprites } from '../raster/raster.js'
import { runNumbers, type Sprite } from '../raster/sprite.js'

/** In pixels; the right and bottom ones are no longer of it. */
interface InkBounds {
  readonly left: number
  readonly top: number
  readonly right: number
  readonly bottom: number
}

/**
 * The sprites of an art, parted into those that come near to one another: the words of a page of text stand apart, letters and the
 * marks under them together. Each part keeps the order in which it is painted; what has no ink is in none.
 */
export function standApart(sprites: PlacedSprites): readonly PlacedSprites[] {
  if (sprites.length === 1) return [sprites]
  const parts = partsInBoxes(sprites.length)
  for (const [index, placed] of sprites.entries()) {
    const own = boundsOnPage(placed)
    if (own !== undefined) parts.add(index, own)
  }
  return parts.members().map(members => members.map(index => sprites[index]!))
}

/** A page of text has hundreds of words, each held against all before it: so the edges of their boxes are plain numbers in a row. */
function partsInBoxes(most: number) {
  const edges = new Int32Array(4 * most)
  let members: (readonly number[])[] = []
  /** A row's codes are of what differs from the row above, so ink reaches one row further down. */
  const lastNear = ({ left, top, right, bottom }: InkBounds): number => {
    for (let part = members.length - 1; part >= 0; part--) {
      const edge = 4 * part
      if (
        edges[edge]! < right &&
        left < edges[edge + 2]! &&
        edges[edge + 1]! <= bottom &&
        top <= edges[edge + 3]!
      )
        return part
    }
    return -1
  }
  return {
    add: (index: number, own: InkBounds): void => {
      let box = own
      let joined: readonly number[] = [index]
      // What is joined reaches further, so it may come near to what was passed by.
      for (let near = lastNear(box); near >= 0; near = lastNear(box)) {
        const edge = 4 * near
        box = {
          left: Math.min(box.left, edges[edge]!),
          top: Math.min(box.top, edges[edge + 1]!),
          right: Math.max(box.right, edges[edge + 2]!),
          bottom: Math.max(box.bottom, edges[edge + 3]!),
        }
        joined = [...members[near]!, ...joined]
        edges.copyWithin(edge, edge + 4, 4 * members.length)
        members = members.toSpliced(near, 1)
      }
      edges.set([box.left, box.top, box.right, box.bottom], 4 * members.length)
      members.push(joined)
    },
    members: () => members.map(each => each.toSorted((a, b) => a - b)),
  }
}

function boundsOnPage({ sprite, x, y }: PlacedSprite): InkBounds | undefined {
  const own = boundsOf(sprite)
  return own && { left: own.left + x, top: own.top + y, right: own.right + x, bottom: own.bottom + y }
}

/** From the sprite's origin. */
const bounds = new WeakMap<Sprite, InkBounds | undefined>()

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
