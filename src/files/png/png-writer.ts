import type { Sheet } from '../../sheets/sheet.js'
import { type PageShapes, pageShapes } from '../page/page-shapes.js'
import { createRasterizer, type PreparedSheet } from '../raster/raster.js'
import { bitString } from './bit-string.js'
import { codedArts } from './coded-arts.js'
import { codePage } from './coded-page.js'
import { encodePng, pngFile } from './encode-png.js'
import { keptBands } from './kept-bands.js'
import { runPacker } from './run-packer.js'

export interface PngWriter {
  /** The sheet's PNG file; several may be under way at once. */
  write(sheet: Sheet): Promise<Buffer>
  /** The same of a page that comes without its sheet. */
  writeShapes(page: PageShapes): Promise<Buffer>
}

/** Bands of pages are kept in a quarter as much: the pages that one word changes take six megabytes. */
const BANDS_OF_KEPT = 4

/**
 * Makes PNG files of sheets at one resolution: put together from the packed rows of what stands on the sheet, which costs
 * a fraction of painting and packing it. Sheets with pictures, and those on which much lies on top of other things, are
 * painted. A page at 300 DPI is 8 MB before it is packed, so that memory is used again from page to page.
 *
 * @param keptBytes as much of what was drawn, and of what was coded, as is kept, twice; left out by those who write each page once
 */
export function createPngWriter(dpi: number, keptBytes?: number): PngWriter {
  const rasterizer = createRasterizer(dpi, keptBytes)
  const codesOf = codedArts(keptBytes)
  const bands = keptBytes === undefined ? undefined : keptBands(keptBytes / BANDS_OF_KEPT)
  const packer = runPacker()
  const bits = bitString()
  let canvas: Uint8Array = new Uint8Array(0)

  function painted(prepared: PreparedSheet): Buffer {
    const page = rasterizer.paint(prepared, canvas)
    canvas = page.bytes.length > canvas.length ? page.bytes : canvas
    return encodePng(page, dpi, packer)
  }

  async function writeShapes(page: PageShapes): Promise<Buffer> {
    const prepared = await rasterizer.prepare(page)
    // From here on nothing waits, so that no other page can come onto the canvas.
    const rows = prepared.hasPictures ? undefined : codePage(prepared, codesOf(prepared), bits, bands)
    return rows === undefined ? painted(prepared) : pngFile(prepared, dpi, rows)
  }

  return { writeShapes, write: sheet => writeShapes(pageShapes(sheet)) }
}
