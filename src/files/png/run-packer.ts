import { codeLengths, codesOf } from './prefix-code.js'
import {
  END_OF_BLOCK,
  LONGEST_REPEAT,
  repeatExtraBits,
  repeatExtras,
  repeatSymbols,
  SHORTEST_REPEAT,
  SYMBOLS,
} from './repeat-symbols.js'

/** Packs bytes that come in runs. */
export interface RunPacker {
  /** A byte, so many times. */
  readonly run: (byte: number, count: number) => void
  /** What was packed since the last call, as a zlib stream of its own. */
  readonly take: () => Buffer
}

/** Symbols that say how codes are written: sixteen lengths of codes, and three that we leave out. */
const LENGTHS = 19
/** A token up to 255 is a byte; a repeat of so many bytes is that many more than this. */
const REPEAT = 256
/** Tokens that share codes. */
const BLOCK = 1 << 16
/** The modulus of Adler-32 (RFC 1950, §9). */
const ADLER = 65521
/** Sums are reduced by it before a number no longer holds them exactly: a run has at most 2^25 bytes. */
const [SUMS_SO_FAR, SUM_SO_FAR] = [2 ** 50, 2 ** 24]
/** Deflate with a window of 32 KB, packed fast (RFC 1950, §2.2). */
const HEAD = [0x78, 0x01]

/**
 * A zlib stream (RFC 1950) in which a byte is followed by repeats of itself and nothing else is looked for, as zlib's own
 * strategy for pictures does. Here a run costs the same however long it is: a sheet is white for the most part, and white
 * is neither written, searched nor summed up byte by byte.
 */
export function runPacker(): RunPacker {
  const tokens = new Uint16Array(BLOCK)
  const counts = new Uint32Array(SYMBOLS)
  let out = new Uint8Array(1 << 17)
  out.set(HEAD)
  let end = HEAD.length
  let [held, bits, count] = [0, 0, 0]
  /** Adler-32's two sums, in memory of their own: each would be a new object with every run. */
  const sums = Float64Array.of(1, 0)

  function run(byte: number, length: number): void {
    if (length === 1) {
      sums[0]! += byte
      sums[1]! += sums[0]!
      put(byte, byte)
      return
    }
    sums[1]! += length * sums[0]! + (byte * length * (length + 1)) / 2
    sums[0]! += byte * length
    if (sums[1]! > SUMS_SO_FAR || sums[0]! > SUM_SO_FAR) reduce()
    put(byte, byte)
    let left = length - 1
    while (left >= SHORTEST_REPEAT) {
      const repeated = Math.min(left, LONGEST_REPEAT)
      put(REPEAT + repeated, repeatSymbols[repeated]!)
      left -= repeated
    }
    while (left-- > 0) put(byte, byte)
  }

  function reduce(): void {
    sums[0]! %= ADLER
    sums[1]! %= ADLER
  }

  function put(token: number, symbol: number): void {
    if (count === BLOCK) writeBlock(false)
    tokens[count++] = token
    counts[symbol]!++
  }

  /** A block with codes of its own (RFC 1951, §3.2.7). */
  function writeBlock(isLast: boolean): void {
    counts[END_OF_BLOCK] = 1
    const lengths = codeLengths(counts)
    const codes = codesOf(lengths)
    makeRoom(count * 4 + 2 * SYMBOLS)
    write(isLast ? 1 : 0, 1)
    write(2, 2)
    write(SYMBOLS - 257, 5)
    write(0, 5)
    // Lengths of codes have codes of four bits, all alike: they are few beside what follows.
    write(LENGTHS - 4, 4)
    for (let symbol = 0; symbol < LENGTHS; symbol++) write(symbol < 3 ? 0 : 4, 3)
    for (const length of lengths) write(turnedFour[length]!, 4)
    // There is one distance, the byte before, and its code is one bit, 0.
    write(turnedFour[1]!, 4)
    writeTokens(codes, lengths)
    write(codes[END_OF_BLOCK]!, lengths[END_OF_BLOCK]!)
    counts.fill(0)
    count = 0
    reduce()
  }

  /** Hundreds of thousands a page: what changes with each is held in this function alone. */
  function writeTokens(codes: Uint16Array, lengths: Uint8Array): void {
    const bytes = out
    let [at, waiting, filled] = [end, held, bits]
    for (let index = 0; index < count; index++) {
      const token = tokens[index]!
      const symbol = token < REPEAT ? token : repeatSymbols[token - REPEAT]!
      waiting |= codes[symbol]! << filled
      filled += lengths[symbol]!
      if (token >= REPEAT) {
        // A nought for the distance is written behind how long the repeat is. What is held is fewer than 8 bits, a code at most 15, and these at most 6: 32 hold them all.
        waiting |= repeatExtras[token - REPEAT]! << filled
        filled += repeatExtraBits[token - REPEAT]! + 1
      }
      while (filled >= 8) {
        bytes[at++] = waiting
        waiting >>>= 8
        filled -= 8
      }
    }
    end = at
    held = waiting
    bits = filled
  }

  function write(value: number, length: number): void {
    held |= value << bits
    bits += length
    while (bits >= 8) {
      out[end++] = held
      held >>>= 8
      bits -= 8
    }
  }

  function makeRoom(bytes: number): void {
    if (end + bytes <= out.length) return
    const larger = new Uint8Array(Math.max(out.length * 2, end + bytes))
    larger.set(out)
    out = larger
  }

  function take(): Buffer {
    writeBlock(true)
    write(0, 7)
    reduce()
    const stream = Buffer.alloc(end + 4)
    stream.set(out.subarray(0, end))
    stream.writeUInt32BE(sums[1]! * 65536 + sums[0]!, end)
    end = HEAD.length
    held = bits = 0
    sums.set([1, 0])
    return stream
  }

  return { run, take }
}

/** Codes of four bits in their order, each with its first bit lowest. */
const turnedFour = codesOf(new Uint8Array(16).fill(4))
