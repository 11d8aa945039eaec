import { encodePng } from '../../../src/files/png/encode-png.js'
import type { Pixels } from '../../../src/files/png/pixels.js'
import { runPacker } from '../../../src/files/png/run-packer.js'

/** The PNG file of a picture, as the writer of sheets makes it. */
export function wholePng(pixels: Pixels, dpi: number): Buffer {
  return encodePng(pixels, dpi, runPacker())
}
