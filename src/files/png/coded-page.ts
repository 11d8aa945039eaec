import type { PreparedSheet } from '../raster/raster.js'
import { type BitString, bitString } from './bit-string.js'
import { type ByteSums, codeRows, sumsTogether } from './coded-rows.js'
import type { ChunkData } from './encode-png.js'
import type { KeptBands } from './kept-bands.js'
import { putEnd, putHead } from './shared-code.js'
import { type PlacedCodes, stretchesByRow } from './stretches-by-row.js'

/** Where more than one row in so many would be painted, all are. */
const MOST_PAINTED = 3

/** Adler-32 begins with a one. */
const noBytes: ByteSums = { count: 0, sum: 1, sums: 0 }

/**
 * A page's rows, filtered and packed, put together from those of its arts; undefined where most of them would be painted. They lie in the
 * bits that are given, and are of use as long as those are.
 *
 * @param bands those coded for other pages
 */
export function codePage(
  page: PreparedSheet,
  placed: readonly PlacedCodes[],
  bits: BitString = bitString(),
  bands?: KeptBands,
): ChunkData | undefined {
  bits.clear()
  putHead(bits)
  const sums = bands === undefined ? putRows(page, placed, bits) : putBands(page, placed, bits, bands)
  if (sums === undefined) return undefined
  putEnd(bits)
  return zlibStream(bits, sumsTogether(noBytes, sums))
}

function putRows(page: PreparedSheet, placed: readonly PlacedCodes[], bits: BitString): ByteSums | undefined {
  const stretches = stretchesByRow(page, placed)
  if (stretches.met > page.heightPx / MOST_PAINTED) return undefined
  return codeRows({ page, from: 0, to: page.heightPx, placed }, stretches, bits)
}

/** The same, row for row: what a band comes to depends on what stands on it alone. */
function putBands(
  page: PreparedSheet,
  placed: readonly PlacedCodes[],
  bits: BitString,
  bands: KeptBands,
): ByteSums | undefined {
  let met = 0
  let sums: ByteSums = { count: 0, sum: 0, sums: 0 }
  for (const band of bands.of(page, placed)) {
    met += band.met
    if (met > page.heightPx / MOST_PAINTED) return undefined
    bits.append(band.words, band.start, band.bitCount)
    sums = sumsTogether(sums, band.sums)
  }
  return sums
}

/** Deflate with a window of 32 KB, packed fast (RFC 1950, §2.2). */
const HEAD = [0x78, 0x01]

function zlibStream(bits: BitString, { sum, sums }: ByteSums): ChunkData {
  const packed = Math.ceil(bits.length() / 8)
  return {
    length: HEAD.length + packed + 4,
    copyTo: (file, at) => {
      const words = bits.words()
      file.set(HEAD, at)
      file.set(new Uint8Array(words.buffer, words.byteOffset, packed), at + HEAD.length)
      file.writeUInt32BE((sums * 65536 + sum) >>> 0, at + HEAD.length + packed)
    },
  }
}
