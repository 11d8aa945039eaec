/** How deflate writes that the byte before is repeated so many times (RFC 1951, §3.2.5). */

/** As many bytes as one step back can repeat. */
export const SHORTEST_REPEAT = 3
export const LONGEST_REPEAT = 258
/** Bytes, the end of a block, and lengths. */
export const SYMBOLS = 286
export const END_OF_BLOCK = 256

/** For each length of a repeat its symbol, and what is written behind that. */
export const repeatSymbols = new Uint16Array(LONGEST_REPEAT + 1)
export const repeatExtras = new Uint8Array(LONGEST_REPEAT + 1)
export const repeatExtraBits = new Uint8Array(LONGEST_REPEAT + 1)
for (let length = SHORTEST_REPEAT, symbol = 257; symbol < SYMBOLS - 1; symbol++) {
  const more = symbol < 265 ? 0 : (symbol - 261) >> 2
  for (let extra = 0; extra < 1 << more; extra++, length++) {
    repeatSymbols[length] = symbol
    repeatExtras[length] = extra
    repeatExtraBits[length] = more
  }
}
repeatSymbols[LONGEST_REPEAT] = SYMBOLS - 1
repeatExtras[LONGEST_REPEAT] = 0
repeatExtraBits[LONGEST_REPEAT] = 0
