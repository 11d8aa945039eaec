import type { BandKey } from './band-key.js'
import type { ByteSums } from './coded-rows.js'

/** Rows of a page in the codes of all pages; of use until others are asked for. */
export interface CodedBand {
  /** Where its codes lie, from which word on, and how many bits they are. */
  readonly words: Int32Array
  readonly start: number
  readonly bitCount: number
  readonly sums: ByteSums
  /** In how many of its rows arts meet, so that they are painted. */
  readonly met: number
}

export interface BandMemory {
  readonly find: (key: BandKey) => CodedBand | undefined
  readonly keep: (key: BandKey, band: CodedBand) => void
}

/**
 * Keeps bands, one behind the other in the same memory: each in memory of its own they are thousands, between which what resvg drew
 * comes to lie, so that the system does not get it back. When the memory is full, those are let go that were not asked for since it
 * was full the last time.
 *
 * @param keptBytes as much as is kept, twice
 */
export function bandMemory(keptBytes: number): BandMemory {
  let late = bandRoom(keptBytes >> 2)
  let earlier = bandRoom(keptBytes >> 2)

  function keep(key: BandKey, band: CodedBand): void {
    if (late.put(key, band)) return
    const free = earlier
    earlier = late
    late = free
    late.clear()
    late.put(key, band)
  }

  return {
    find: key => {
      const known = late.find(key)
      if (known !== undefined) return known
      const before = earlier.find(key)
      if (before === undefined) return undefined
      keep(key, before)
      return late.find(key)
    },
    keep,
  }
}

/** Before a band's key and its codes: how long its key is, and five numbers of the band. */
const HEAD = 6

interface BandRoom extends Pick<BandMemory, 'find'> {
  /** False where there is no room for it. */
  readonly put: (key: BandKey, band: CodedBand) => boolean
  readonly clear: () => void
}

function bandRoom(size: number): BandRoom {
  const numbers = new Int32Array(size)
  const places = new Map<number, number>()
  let end = 0
  return {
    find: key => {
      const at = places.get(key.hash())
      if (at === undefined || numbers[at] !== key.length() || !key.isAt(numbers, at + HEAD)) return undefined
      const [bitCount, met] = [numbers[at + 1]!, numbers[at + 2]!]
      const sums = { count: numbers[at + 3]!, sum: numbers[at + 4]!, sums: numbers[at + 5]! }
      return { words: numbers, start: at + HEAD + key.length(), bitCount, sums, met }
    },
    put: (key, { words, start, bitCount, sums, met }) => {
      const at = end
      const begin = at + HEAD + key.length()
      const wordCount = Math.ceil(bitCount / 32)
      if (begin + wordCount > size) return false
      // First what may lie in this memory itself, where it is begun again.
      numbers.set(words.subarray(start, start + wordCount), begin)
      numbers[at] = key.length()
      numbers[at + 1] = bitCount
      numbers[at + 2] = met
      numbers[at + 3] = sums.count
      numbers[at + 4] = sums.sum
      numbers[at + 5] = sums.sums
      key.copyTo(numbers, at + HEAD)
      places.set(key.hash(), at)
      end = begin + wordCount
      return true
    },
    clear: () => {
      places.clear()
      end = 0
    },
  }
}
