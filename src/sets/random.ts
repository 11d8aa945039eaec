/**
 * Our own seeded chance, so that the same plan and seed give the same cards on every machine.
 *
 * The generator is xoshiro128** (Blackman and Vigna, "Scrambled Linear Pseudorandom Number Generators", 2021), its
 * state filled by SplitMix64 as its authors advise, from an FNV-1a hash of seed and label.
 */

/** A stream of chance. The only values of this project that change when used. */
export interface Generator {
  /** The next 32 random bits as a whole number, 0 to 2^32 − 1. */
  readonly next: () => number
  /** A whole number from 0 to `limit` − 1, each equally likely; `limit` from 1 to 2^32. */
  readonly below: (limit: number) => number
}

/** A stream of its own for each label (an item's name, say): adding an item leaves the others' cards as they were. */
export function generatorFor(seed: number, label: string): Generator {
  const splitMix = splitMix64(hashFnv1a64(`${seed}:${label}`))
  const [a, b] = [splitMix(), splitMix()]
  return xoshiro128StarStar([low32(a), low32(a >> 32n), low32(b), low32(b >> 32n)])
}

/** A new list in random order, every order equally likely (Fisher and Yates; Durstenfeld 1964). */
export function shuffle<T>(items: readonly T[], generator: Generator): T[] {
  const shuffled = [...items]
  for (let last = shuffled.length - 1; last > 0; last--) {
    const chosen = generator.below(last + 1)
    const item = shuffled[last]!
    shuffled[last] = shuffled[chosen]!
    shuffled[chosen] = item
  }
  return shuffled
}

/** `state`: four 32-bit words, not all zero. */
export function xoshiro128StarStar(state: readonly [number, number, number, number]): Generator {
  let [a, b, c, d] = state
  const below = (limit: number): number => {
    if ((limit >>> 0 !== limit || limit === 0) && limit !== ALL_WORDS)
      throw new RangeError(`cannot choose below ${limit}`)
    // Reckoned here, and not asked for: a class's boards take two hundred thousand before V8 has compiled this for speed.
    for (;;) {
      const last = b
      const five = Math.imul(last, 5)
      c ^= a
      d ^= last
      b = last ^ c
      a ^= d
      c ^= last << 9
      d = (d << 11) | (d >>> 21)
      // Rotated by 7, as d was by 11.
      const value = Math.imul((five << 7) | (five >>> 25), 9) >>> 0
      // Values past the last whole multiple of the limit are drawn again: taking the remainder of all of them
      // would favour the small numbers. Only the last few of all values can be past it, so it is seldom reckoned.
      if (value < ALL_WORDS - limit || value < ALL_WORDS - (ALL_WORDS % limit))
        // Both as whole numbers of 32 bits, whose remainder the processor takes at once.
        return limit === ALL_WORDS ? value : value % (limit >>> 0)
    }
  }
  return { below, next: () => below(ALL_WORDS) }
}

/** So many words of 32 bits there are. */
const ALL_WORDS = 2 ** 32

/** SplitMix64 (Steele, Lea and Flood 2014, as fixed by Vigna): 64-bit words from a 64-bit seed. */
export function splitMix64(seed: bigint): () => bigint {
  let state = BigInt.asUintN(64, seed)
  return () => {
    state = BigInt.asUintN(64, state + 0x9e3779b97f4a7c15n)
    let word = state
    word = BigInt.asUintN(64, (word ^ (word >> 30n)) * 0xbf58476d1ce4e5b9n)
    word = BigInt.asUintN(64, (word ^ (word >> 27n)) * 0x94d049bb133111ebn)
    return word ^ (word >> 31n)
  }
}

/** FNV-1a over the text's UTF-8 bytes, 64 bits (Fowler, Noll and Vo). */
export function hashFnv1a64(text: string): bigint {
  let hash = 0xcbf29ce484222325n
  for (const byte of new TextEncoder().encode(text)) {
    hash = BigInt.asUintN(64, (hash ^ BigInt(byte)) * 0x100000001b3n)
  }
  return hash
}

function low32(word: bigint): number {
  return Number(BigInt.asIntN(32, word))
}
