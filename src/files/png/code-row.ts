import type { BitString } from './bit-string.js'
import { putByte, putRepeats } from './shared-code.js'

/** The modulus of Adler-32 (RFC 1950, §9). */
export const ADLER = 65521

/** Rows of pixels, of which each begins at a multiple of four bytes. */
export interface RowsOfBytes {
  readonly bytes: Uint8Array
  /** The same memory, four bytes at a time: numbers that need no memory of their own, which four white pixels read without a sign would. */
  readonly words: Int32Array
  readonly stride: number
}

export function rowsOfBytes(bytes: Uint8Array, stride: number): RowsOfBytes {
  return { bytes, words: new Int32Array(bytes.buffer, bytes.byteOffset, bytes.byteLength >> 2), stride }
}

/**
 * Codes part of a row as what it is less the row above it, byte by byte, and adds that to the two sums of Adler-32, below its modulus. Most of a
 * row is as the one above, and is passed over four bytes at a time.
 *
 * @param row where the row begins; @param from and @param to bytes of the row
 */
export function codeRow(
  bits: BitString,
  { bytes, words, stride }: RowsOfBytes,
  row: number,
  from: number,
  to: number,
  sums: Int32Array,
): void {
  let sum = sums[0]!
  let ofSums = sums[1]!
  const end = row + to
  for (let at = row + from; at < end; ) {
    const begin = at
    const value = (bytes[at]! - bytes[at - stride]!) & 255
    at = value === 0 ? sameUntil(bytes, words, at + 1, end, stride) : at + 1
    if (value !== 0) while (at < end && ((bytes[at]! - bytes[at - stride]!) & 255) === value) at++
    const count = at - begin
    putByte(bits, value)
    if (count > 1) putRepeats(bits, value, count - 1)
    ofSums += count * sum + (value * count * (count + 1)) / 2
    sum += value * count
  }
  sums[0] = sum % ADLER
  sums[1] = ofSums % ADLER
}

/** Where the row is first another than the one above. */
export function sameUntil(
  bytes: Uint8Array,
  words: Int32Array,
  from: number,
  end: number,
  stride: number,
): number {
  let at = from
  while (at < end && (at & 3) !== 0) {
    if (bytes[at] !== bytes[at - stride]) return at
    at++
  }
  const up = stride >> 2
  let word = at >> 2
  const lastWord = end >> 2
  while (word < lastWord && words[word] === words[word - up]) word++
  at = Math.max(at, word << 2)
  while (at < end && bytes[at] === bytes[at - stride]) at++
  return Math.min(at, end)
}
