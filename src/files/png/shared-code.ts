import { type BitString, bitString } from './bit-string.js'
import { codesOf } from './prefix-code.js'
import {
  END_OF_BLOCK,
  LONGEST_REPEAT,
  repeatExtraBits,
  repeatExtras,
  repeatSymbols,
  SHORTEST_REPEAT,
  SYMBOLS,
} from './repeat-symbols.js'

/**
 * How many bits the code of each symbol has, a hexadecimal digit each: as Huffman's way (`codeLengths`) gave them for what comes
 * on cards, boards and lists, counted over four plans of the demo. A symbol that never came has a long code. They are the same
 * for every page ever made, so what is coded once can stand on any of them.
 */
const lengths = Uint8Array.from(
  '286eeeebee9bbdd779eeaaddceeeede778fcbefef9cbeef878eeaceeeeeccfa767effdedbaeeedf878faceebeccefbc8' +
    '77eeccfeadfdcec978bceeddcbffdae868ebaffbccdeecb978beddfccbedbee868bbffbddccebbb978eedeebadeeefe8' +
    '68bccdeeeeedace96afeebaaeefebef969ddeeeebecaaeea6bddbaaeebedeff8f78788789888878887888888977772',
  digit => Number.parseInt(digit, 16),
)
const codes = codesOf(lengths)

export function putByte(into: BitString, byte: number): void {
  into.put(codes[byte]!, lengths[byte]!)
}

/** So many noughts, the first of them as it is; what stands between two arts, so that the codes of most lengths are kept. */
export function putNoughts(into: BitString, count: number): void {
  if (count > MOST_KEPT) {
    putByte(into, 0)
    putRepeats(into, 0, count - 1)
    return
  }
  if (noughtLengths[count] === 0) keepNoughts(count)
  const length = noughtLengths[count]!
  if (length <= 32) into.put(lowNoughts[count]!, length)
  else {
    into.put(lowNoughts[count]!, 32)
    into.put(highNoughts[count]!, length - 32)
  }
}

/** A row at 300 DPI has fewer; their codes have no more than 64 bits. */
const MOST_KEPT = 4095
const lowNoughts = new Int32Array(MOST_KEPT + 1)
const highNoughts = new Int32Array(MOST_KEPT + 1)
const noughtLengths = new Uint8Array(MOST_KEPT + 1)
const noughts = bitString()

function keepNoughts(count: number): void {
  noughts.clear()
  putByte(noughts, 0)
  if (count > 1) putRepeats(noughts, 0, count - 1)
  noughtLengths[count] = noughts.length()
  const words = noughts.words()
  lowNoughts[count] = words[0]!
  highNoughts[count] = noughts.length() > 32 ? words[1]! : 0
}

/** The byte before, so many times more. */
export function putRepeats(into: BitString, byte: number, times: number): void {
  let left = times
  while (left >= LONGEST_REPEAT) {
    const whole = Math.min((left / LONGEST_REPEAT) | 0, MOST_AT_ONCE)
    into.put(wholeCodes[whole]!, whole * repeatLengths[LONGEST_REPEAT]!)
    left -= whole * LONGEST_REPEAT
  }
  if (left >= SHORTEST_REPEAT) into.put(repeatCodes[left]!, repeatLengths[left]!)
  else while (left-- > 0) putByte(into, byte)
}

/** For each length of a repeat all its bits, that of its distance among them, which is a nought. */
const repeatCodes = new Int32Array(LONGEST_REPEAT + 1)
const repeatLengths = new Uint8Array(LONGEST_REPEAT + 1)
for (let times = SHORTEST_REPEAT; times <= LONGEST_REPEAT; times++) {
  const symbol = repeatSymbols[times]!
  repeatCodes[times] = codes[symbol]! | (repeatExtras[times]! << lengths[symbol]!)
  repeatLengths[times] = lengths[symbol]! + repeatExtraBits[times]! + 1
}

/** A white row is ten of the longest repeats, one after the other: as many as 32 bits hold are put at once. */
const MOST_AT_ONCE = Math.floor(32 / repeatLengths[LONGEST_REPEAT]!)
const wholeCodes = new Int32Array(MOST_AT_ONCE + 1)
for (let count = 1; count <= MOST_AT_ONCE; count++)
  wholeCodes[count] =
    (wholeCodes[count - 1]! << repeatLengths[LONGEST_REPEAT]!) | repeatCodes[LONGEST_REPEAT]!

/** Lengths of codes have codes of four bits, all alike (as in `run-packer.ts`). */
const turnedFour = codesOf(new Uint8Array(16).fill(4))
const LENGTHS = 19

/** What a block begins with that has these codes (RFC 1951, §3.2.7), and is the last. */
export function putHead(into: BitString): void {
  into.put(1, 1)
  into.put(2, 2)
  into.put(SYMBOLS - 257, 5)
  into.put(0, 5)
  into.put(LENGTHS - 4, 4)
  for (let symbol = 0; symbol < LENGTHS; symbol++) into.put(symbol < 3 ? 0 : 4, 3)
  for (const length of lengths) into.put(turnedFour[length]!, 4)
  into.put(turnedFour[1]!, 4)
}

export function putEnd(into: BitString): void {
  into.put(codes[END_OF_BLOCK]!, lengths[END_OF_BLOCK]!)
}
