import { createRequire } from 'node:module'

const load = createRequire(import.meta.url)

/** Its longer side: 300 DPI over 17 cm, more than any card's picture has. */
const LONGER_SIDE_PX = 2000

/** The drawing as a PNG, by resvg without any typeface or file of this machine; undefined where it cannot be read. */
export function svgInPixels(svg: Uint8Array): Uint8Array | undefined {
  // Loaded with the first drawing: most plans have none, and are read and counted without.
  const { Resvg }: typeof import('@resvg/resvg-js') = load('@resvg/resvg-js')
  try {
    const font = { loadSystemFonts: false }
    const { width, height } = new Resvg(Buffer.from(svg), { font })
    const mode = width < height ? 'height' : 'width'
    return new Resvg(Buffer.from(svg), { font, fitTo: { mode, value: LONGER_SIDE_PX } }).render().asPng()
  } catch {
    return undefined
  }
}
