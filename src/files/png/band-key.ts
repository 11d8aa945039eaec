/** All that a band's codes depend on, in numbers: of the thousands of bands of a run most are looked for alone. */
export interface BandKey {
  readonly begin: () => void
  readonly add: (one: number, two: number, three: number) => void
  readonly length: () => number
  /** Two that are not the same may have one. */
  readonly hash: () => number
  readonly isAt: (numbers: Int32Array, at: number) => boolean
  readonly copyTo: (numbers: Int32Array, at: number) => void
}

export function bandKey(): BandKey {
  let key = new Int32Array(2 ** 8)
  let length = 0
  let hash = 0
  const mix = (number: number): void => {
    key[length++] = number
    hash = Math.imul(hash ^ number, 0x9e3779b1)
    hash ^= hash >>> 15
  }
  return {
    begin: () => {
      length = 0
      hash = 0
    },
    add: (one, two, three) => {
      if (length + 3 > key.length) {
        const larger = new Int32Array(2 * key.length)
        larger.set(key)
        key = larger
      }
      mix(one)
      mix(two)
      mix(three)
    },
    length: () => length,
    hash: () => hash,
    isAt: (numbers, at) => {
      for (let index = 0; index < length; index++) if (numbers[at + index] !== key[index]) return false
      return true
    },
    copyTo: (numbers, at) => {
      for (let index = 0; index < length; index++) numbers[at + index] = key[index]!
    },
  }
}
