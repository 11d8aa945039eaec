import type { PlacedSprites, PreparedSheet } from '../raster/raster.js'
import type { Sprite } from '../raster/sprite.js'
import { type CodedArt, codeArt } from './coded-art.js'
import type { PlacedCodes } from './coded-page.js'
import { standApart } from './stand-apart.js'

/** As much as is kept, twice. */
const KEPT_BYTES = 2 * 2 ** 20

/**
 * The codes of what stands on a page: shapes that come near to one another are coded together, and those that are drawn alike
 * once. Those used last are kept.
 */
export function codedArts(keptBytes = KEPT_BYTES): (page: PreparedSheet) => readonly PlacedCodes[] {
  const numbers = new WeakMap<Sprite, number>()
  let count = 0
  let late = new Map<string, CodedArt | undefined>()
  let earlier = new Map<string, CodedArt | undefined>()
  let bytes = 0

  function numberOf(sprite: Sprite): number {
    const known = numbers.get(sprite) ?? ++count
    numbers.set(sprite, known)
    return known
  }

  /** Of shapes each so far from the first of them. */
  function codes(sprites: PlacedSprites, channels: 1 | 3): CodedArt | undefined {
    const places = sprites.map(({ sprite, x, y }) => `${numberOf(sprite)} ${x} ${y}`)
    const key = `${channels} ${places.join(' ')}`
    if (late.has(key)) return late.get(key)
    const art = earlier.has(key) ? earlier.get(key) : codeArt(sprites, channels)
    if (bytes > keptBytes) {
      earlier = late
      late = new Map()
      bytes = 0
    }
    late.set(key, art)
    bytes +=
      key.length +
      (art === undefined ? 0 : art.stretches.byteLength + art.firsts.byteLength + art.words.byteLength)
    return art
  }

  return ({ drawings, channels }) =>
    drawings.flatMap(sprites =>
      standApart(sprites).flatMap(part => {
        const { x, y } = part[0]!
        const fromFirst = part.map(each => ({ sprite: each.sprite, x: each.x - x, y: each.y - y }))
        const art = codes(fromFirst, channels)
        return art === undefined ? [] : [{ art, x, y }]
      }),
    )
}
