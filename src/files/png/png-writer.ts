import type { Sheet } from '../../sheets/sheet.js'
import { createRasterizer } from '../raster/raster.js'
import { encodeFiltered } from './encode-png.js'
import { filteredBytes, filterUp } from './filter-up.js'

export interface PngWriter {
  /** The sheet's PNG file; several may be under way at once. */
  write(sheet: Sheet): Promise<Buffer>
}

/**
 * Makes PNG files of sheets at one resolution. A page at 300 DPI is 8 MB before it is packed, so the memory is
 * used again from page to page; packing runs beside the drawing of the next page.
 */
export function createPngWriter(dpi: number): PngWriter {
  const rasterizer = createRasterizer(dpi)
  const spare: Uint8Array[] = []
  let canvas: Uint8Array = new Uint8Array(0)
  return {
    async write(sheet) {
      const prepared = await rasterizer.prepare(sheet)
      // From here to the packing nothing waits, so that no other page can come onto the canvas.
      const page = rasterizer.paint(prepared, canvas)
      canvas = page.bytes.length > canvas.length ? page.bytes : canvas
      const length = filteredBytes(page)
      const index = spare.findIndex(memory => memory.length === length)
      const filtered = index < 0 ? new Uint8Array(length) : spare.splice(index, 1)[0]!
      filterUp(page, filtered)
      const file = await encodeFiltered(page, dpi, filtered)
      spare.push(filtered)
      return file
    },
  }
}
