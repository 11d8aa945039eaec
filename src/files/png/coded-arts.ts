import type { PlacedSprites, PreparedSheet } from '../raster/raster.js'
import type { Sprite } from '../raster/sprite.js'
import { type CodedArt, codeArt } from './coded-art.js'
import { standApart } from './stand-apart.js'
import type { PlacedCodes } from './stretches-by-row.js'

/** As much as is kept, twice. */
const KEPT_BYTES = 2 * 2 ** 20

/**
 * The codes of what stands on a page: shapes that come near to one another are coded together, and those that are drawn alike
 * once. Those used last are kept.
 */
export function codedArts(keptBytes = KEPT_BYTES): (page: PreparedSheet) => readonly PlacedCodes[] {
  const numbers = new WeakMap<Sprite, number>()
  let count = 0
  let late = new Map<string | number, CodedArt | undefined>()
  let earlier = new Map<string | number, CodedArt | undefined>()
  let bytes = 0

  function numberOf(sprite: Sprite): number {
    const known = numbers.get(sprite) ?? ++count
    numbers.set(sprite, known)
    return known
  }

  /** Equal for what is drawn alike. Most of what stands on a page is one shape alone, for which a number is enough. */
  function keyOf(sprites: PlacedSprites, channels: 1 | 3): string | number {
    const first = sprites[0]!
    if (sprites.length === 1) return 4 * numberOf(first.sprite) + channels
    const places = sprites.map(({ sprite, x, y }) => `${numberOf(sprite)} ${x - first.x} ${y - first.y}`)
    return `${channels} ${places.join(' ')}`
  }

  /** Each shape so far from the first of them. */
  function codes(sprites: PlacedSprites, channels: 1 | 3): CodedArt | undefined {
    const key = keyOf(sprites, channels)
    const known = late.get(key)
    if (known !== undefined || late.has(key)) return known
    const art = earlier.has(key) ? earlier.get(key) : codeArt(fromFirst(sprites), channels)
    if (bytes > keptBytes) {
      earlier = late
      late = new Map()
      bytes = 0
    }
    late.set(key, art)
    bytes +=
      (typeof key === 'number' ? 8 : key.length) +
      (art === undefined ? 0 : art.stretches.byteLength + art.words.byteLength)
    return art
  }

  return ({ drawings, channels }) => {
    const placed: PlacedCodes[] = []
    for (const sprites of drawings)
      for (const part of standApart(sprites)) {
        const art = codes(part, channels)
        if (art !== undefined) placed.push({ art, x: part[0]!.x, y: part[0]!.y })
      }
    return placed
  }
}

function fromFirst(sprites: PlacedSprites): PlacedSprites {
  const { x: left, y: top } = sprites[0]!
  return sprites.map(({ sprite, x, y }) => ({ sprite, x: x - left, y: y - top }))
}
