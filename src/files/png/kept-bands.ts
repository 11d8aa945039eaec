import type { PreparedSheet } from '../raster/raster.js'
import { bandKey } from './band-key.js'
import { bandMemory, type CodedBand } from './band-memory.js'
import { bitString } from './bit-string.js'
import type { CodedArt } from './coded-art.js'
import { codeRows } from './coded-rows.js'
import { type PlacedCodes, stretchesByRow } from './stretches-by-row.js'

/** A line of text is about as high. When one word of a page is another, most of its bands are as they were. */
const BAND_ROWS = 64

/**
 * Pages in bands, for a program that writes the same ones again with a word changed: a band on which the same stands as on one that was
 * coded of late is taken from there.
 */
export interface KeptBands {
  /** A page's bands from the top down, each coded when it is asked for; of use until the next one is. */
  readonly of: (page: PreparedSheet, placed: readonly PlacedCodes[]) => Iterable<CodedBand>
}

/** @param keptBytes as much as is kept, twice */
export function keptBands(keptBytes: number): KeptBands {
  const memory = bandMemory(keptBytes)
  const bits = bitString()
  const key = bandKey()
  const numbers = new WeakMap<CodedArt, number>()
  let count = 0

  function numberOf(art: CodedArt): number {
    const number = numbers.get(art) ?? ++count
    numbers.set(art, number)
    return number
  }

  function codeBand(page: PreparedSheet, from: number, to: number, on: readonly PlacedCodes[]): CodedBand {
    const placed = on.map(({ art, x, y }) => ({ art, x, y: y - from }))
    const { widthPx, channels } = page
    const stretches = stretchesByRow({ widthPx, heightPx: to - from, channels }, placed)
    bits.clear()
    const sums = codeRows({ page, from, to, placed }, stretches, bits)
    const band = { words: bits.words(), start: 0, bitCount: bits.length(), sums, met: stretches.met }
    memory.keep(key, band)
    return band
  }

  return {
    *of(page, placed) {
      const { widthPx, heightPx, channels } = page
      for (const [index, on] of byBand(heightPx, placed).entries()) {
        const from = index * BAND_ROWS
        const to = Math.min(heightPx, from + BAND_ROWS)
        key.begin()
        // The page's first row is coded in another way.
        key.add(channels, widthPx, from === 0 ? -to : to - from)
        for (const { art, x, y } of on) key.add(numberOf(art), x, y - from)
        yield memory.find(key) ?? codeBand(page, from, to, on)
      }
    },
  }
}

/** What stands on each band, the row below its ink included, in the order in which it is painted. */
function byBand(heightPx: number, placed: readonly PlacedCodes[]): readonly (readonly PlacedCodes[])[] {
  const bands = Array.from({ length: Math.ceil(heightPx / BAND_ROWS) }, (): PlacedCodes[] => [])
  for (const each of placed) {
    const top = Math.max(0, each.y + each.art.top)
    const bottom = Math.min(heightPx, each.y + each.art.top + each.art.rows)
    for (let band = Math.floor(top / BAND_ROWS); band * BAND_ROWS < bottom; band++) bands[band]!.push(each)
  }
  return bands
}
