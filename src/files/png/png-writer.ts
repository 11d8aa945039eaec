import type { Sheet } from '../../sheets/sheet.js'
import { createRasterizer } from '../raster/raster.js'
import { encodePng } from './encode-png.js'
import { runPacker } from './run-packer.js'

export interface PngWriter {
  /** The sheet's PNG file; several may be under way at once. */
  write(sheet: Sheet): Promise<Buffer>
}

/**
 * Makes PNG files of sheets at one resolution. A page at 300 DPI is 8 MB before it is packed, so the memory is
 * used again from page to page.
 */
export function createPngWriter(dpi: number): PngWriter {
  const rasterizer = createRasterizer(dpi)
  const packer = runPacker()
  let canvas: Uint8Array = new Uint8Array(0)
  return {
    async write(sheet) {
      const prepared = await rasterizer.prepare(sheet)
      // From here on nothing waits, so that no other page can come onto the canvas.
      const page = rasterizer.paint(prepared, canvas)
      canvas = page.bytes.length > canvas.length ? page.bytes : canvas
      return encodePng(page, dpi, packer)
    },
  }
}
