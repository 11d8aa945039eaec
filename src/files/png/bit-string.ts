/** Bits in words of 32, the first lowest, as deflate takes them (RFC 1951, §3.1.1). */
export interface BitString {
  /** At most 32 bits, in the lowest ones of a number that has no others. */
  readonly put: (bits: number, count: number) => void
  /** Bits that lie in words, from the lowest of the first one on; none stand behind the last. */
  readonly append: (words: Int32Array, from: number, count: number) => void
  /** Goes on with the next whole word, and tells which one that is. */
  readonly nextWord: () => number
  /** How many were put since the beginning, the rest of whole words among them. */
  readonly length: () => number
  /** The words so far; they are of this string, and others once it goes on. With a sign they are numbers that need no memory of their own. */
  readonly words: () => Int32Array
  readonly clear: () => void
}

export function bitString(): BitString {
  let words = new Int32Array(1 << 12)
  let at = 0
  let held = 0
  let filled = 0

  function makeRoom(more: number): void {
    if (at + more < words.length) return
    const larger = new Int32Array(Math.max(words.length * 2, at + more + 1))
    larger.set(words)
    words = larger
  }

  function put(bits: number, count: number): void {
    held |= bits << filled
    if (filled + count < 32) {
      filled += count
      return
    }
    if (at + 1 >= words.length) makeRoom(1)
    words[at++] = held
    held = filled === 0 ? 0 : bits >>> (32 - filled)
    filled += count - 32
  }

  function append(from: Int32Array, start: number, count: number): void {
    makeRoom((count >> 5) + 2)
    const whole = start + (count >> 5)
    const into = words
    let to = at
    if (filled === 0) for (let index = start; index < whole; index++) into[to++] = from[index]!
    else {
      const shift = filled
      const back = 32 - shift
      let over = held
      for (let index = start; index < whole; index++) {
        const word = from[index]!
        into[to++] = over | (word << shift)
        over = word >>> back
      }
      held = over
    }
    at = to
    const rest = count & 31
    if (rest > 0) put(from[whole]!, rest)
  }

  return {
    put,
    append,
    nextWord: () => {
      if (filled > 0) {
        makeRoom(1)
        words[at++] = held
        held = 0
        filled = 0
      }
      return at
    },
    length: () => at * 32 + filled,
    words: () => {
      makeRoom(1)
      words[at] = held
      return words
    },
    clear: () => {
      at = 0
      held = 0
      filled = 0
    },
  }
}
