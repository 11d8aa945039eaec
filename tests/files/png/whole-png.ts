import { encodeFiltered } from '../../../src/files/png/encode-png.js'
import { filteredBytes, filterUp } from '../../../src/files/png/filter-up.js'
import type { Pixels } from '../../../src/files/png/pixels.js'

/** The PNG file of a picture, as the writer of sheets makes it. */
export async function wholePng(pixels: Pixels, dpi: number): Promise<Buffer> {
  const filtered = new Uint8Array(filteredBytes(pixels))
  filterUp(pixels, filtered)
  return encodeFiltered(pixels, dpi, filtered)
}
