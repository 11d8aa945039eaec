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
 * The sprites of an art, parted into those that come near to one another, or near to what comes near: the words of a page of text
 * stand apart, and those in the cells of a table from its lines; letters and the marks under them stand together. Each part keeps the
 * order in which it is painted; what has no ink is in none.
 */
export function standApart(sprites: PlacedSprites): readonly PlacedSprites[] {
  if (sprites.length === 1) return [sprites]
  const first = firstsOfParts(sprites)
  const parts = new Map<number, PlacedSprite[]>()
  for (const [index, placed] of sprites.entries()) {
    const part = first[index]!
    if (part < 0) continue
    const members = parts.get(part) ?? []
    if (members.length === 0) parts.set(part, members)
    members.push(placed)
  }
  return [...parts.values()]
}

/**
 * For each sprite the first of its part; below nought for one that has no ink. A page of text has hundreds of words, each held
 * against all before it: so the edges of their boxes are plain numbers in a row.
 */
function firstsOfParts(sprites: PlacedSprites): Int32Array {
  const first = new Int32Array(sprites.length)
  const edges = new Int32Array(4 * sprites.length)
  const firstOf = (sprite: number): number => {
    let at = sprite
    while (first[at] !== at) at = first[at]!
    return at
  }
  for (let index = 0; index < sprites.length; index++) {
    const own = boundsOnPage(sprites[index]!)
    first[index] = own === undefined ? -1 : index
    if (own === undefined) continue
    const { left, top, right, bottom } = own
    edges.set([left, top, right, bottom], 4 * index)
    for (let other = 0, edge = 0; other < index; other++, edge += 4) {
      if (first[other]! < 0) continue
      // A row's codes are of what differs from the row above, so ink reaches one row further down.
      const isNear =
        edges[edge]! < right &&
        left < edges[edge + 2]! &&
        edges[edge + 1]! <= bottom &&
        top <= edges[edge + 3]!
      if (!isNear) continue
      const [one, two] = [firstOf(other), firstOf(index)]
      first[Math.max(one, two)] = Math.min(one, two)
    }
  }
  for (let index = 0; index < first.length; index++) if (first[index]! >= 0) first[index] = firstOf(index)
  return first
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
function measured({ runs, rowsAlike }: Sprite): InkBounds | undefined {
  if (runs.length === 0) return undefined
  const top = runs[0]!
  const bottom = runs[runs.length - runNumbers]! + 1
  if (rowsAlike === true) return { left: runs[1]!, top, right: runs[1]! + runs[2]!, bottom }
  let left = Infinity
  let right = -Infinity
  for (let run = 0; run < runs.length; run += runNumbers) {
    if (runs[run + 1]! < left) left = runs[run + 1]!
    if (runs[run + 1]! + runs[run + 2]! > right) right = runs[run + 1]! + runs[run + 2]!
  }
  return { left, top, right, bottom }
}
