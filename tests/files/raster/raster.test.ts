import { Resvg } from '@resvg/resvg-js'
import sharp from 'sharp'
import { describe, expect, it } from 'vitest'
import { sheetToSvg } from '../../../src/files/page/svg.js'
import type { Pixels } from '../../../src/files/png/pixels.js'
import { createRasterizer } from '../../../src/files/raster/raster.js'
import { svgInPixels } from '../../../src/files/raster/svg-in-pixels.js'
import type { ImageShape } from '../../../src/pieces/piece.js'
import type { Sheet } from '../../../src/sheets/sheet.js'
import { art, blueBar, card, marsh, reed, ring, sheet } from '../marsh-sheets.js'
import { firstOfEach, pixelBytes } from '../page-pixels.js'

/** resvg's own drawing of the whole page, over white, as grey. */
function drawnWhole(page: Sheet, dpi: number): { widthPx: number; heightPx: number; grey: Uint8Array } {
  const drawn = new Resvg(sheetToSvg(page), {
    dpi,
    background: '#ffffff',
    font: { loadSystemFonts: false },
  }).render()
  return { widthPx: drawn.width, heightPx: drawn.height, grey: firstOfEach(drawn.pixels, 4) }
}

/** Places every art and cut on whole pixels, so that nothing is moved by rounding. */
function onWholePixels(dpi: number): Sheet {
  const mm = (pixels: number): number => (pixels * 25.4) / dpi
  return sheet({
    pieces: [
      {
        piece: card(1, reed, { art: [{ art: reed, xMm: mm(40), yMm: mm(30) }] }),
        xMm: mm(100),
        yMm: mm(120),
        turn: 0,
      },
      {
        piece: card(2, marsh, {
          widthMm: mm(600),
          heightMm: mm(400),
          art: [{ art: marsh, xMm: mm(40), yMm: mm(30) }],
        }),
        xMm: mm(900),
        yMm: mm(120),
        turn: 180,
      },
    ],
    cuts: [{ x1Mm: 0, y1Mm: mm(100), x2Mm: mm(2480), y2Mm: mm(100), widthMm: mm(4) }],
    furniture: [],
  })
}

const inked = (pixels: Uint8Array): number => pixels.reduce((count, grey) => count + (grey < 128 ? 1 : 0), 0)

describe('a composed page', () => {
  it('equals resvg’s own drawing of the whole page when arts stand on whole pixels', async () => {
    // An even number of pixels to the millimetre, so that three decimals in the SVG hit the pixel.
    const dpi = 254
    const page = onWholePixels(dpi)
    const composed = await createRasterizer(dpi).draw(page)
    const whole = drawnWhole(page, dpi)
    expect([composed.widthPx, composed.heightPx]).toEqual([whole.widthPx, whole.heightPx])
    const worst = pixelBytes(composed).reduce(
      (most, grey, at) => Math.max(most, Math.abs(grey - whole.grey[at]!)),
      0,
    )
    expect(inked(pixelBytes(composed))).toBeGreaterThan(5000)
    expect(worst).toBeLessThanOrEqual(2)
  })

  it('moves no ink by more than a pixel where arts stand between pixels', async () => {
    const composed = await createRasterizer(300).draw(sheet())
    const whole = drawnWhole(sheet(), 300)
    const { widthPx } = composed
    const darkNear = (pixels: Uint8Array, at: number): boolean => {
      for (const row of [-widthPx, 0, widthPx])
        for (const column of [-1, 0, 1]) if ((pixels[at + row + column] ?? 255) < 255) return true
      return false
    }
    const astray = (from: Uint8Array, to: Uint8Array): number =>
      from.reduce((count, grey, at) => count + (grey < 128 && !darkNear(to, at) ? 1 : 0), 0)
    expect(inked(pixelBytes(composed))).toBeGreaterThan(5000)
    expect(astray(pixelBytes(composed), whole.grey)).toBe(0)
    expect(astray(whole.grey, pixelBytes(composed))).toBe(0)
  })

  it('is the same whatever was drawn before it', async () => {
    const fresh = await createRasterizer(150).draw(sheet())
    const used = createRasterizer(150)
    await used.draw(onWholePixels(150))
    expect(Buffer.compare((await used.draw(sheet())).bytes, fresh.bytes)).toBe(0)
  })

  it('is grey without colour and red, green, blue with one coloured mark', async () => {
    const colored = sheet({ furniture: [{ art: art([blueBar]), xMm: 20, yMm: 200 }] })
    const rasterizer = createRasterizer(300)
    expect((await rasterizer.draw(sheet())).channels).toBe(1)
    const page = await rasterizer.draw(colored)
    expect(page.channels).toBe(3)
    expect(pixelAt(page, 25, 211.3)).toEqual([0x00, 0x61, 0x8a])
    expect(pixelAt(page, 200, 290)).toEqual([255, 255, 255])
  })

  it('draws ink that reaches beyond its art’s own size', async () => {
    const wide = art([{ kind: 'path', d: 'M-5 -5L5 -5L5 5L-5 5Z', fill: '#000000' }], '', 1, 1)
    const page = await createRasterizer(300).draw(sheet({ furniture: [{ art: wide, xMm: 100, yMm: 200 }] }))
    expect(pixelAt(page, 96, 196)).toEqual([0])
    expect(pixelAt(page, 104, 204)).toEqual([0])
  })

  it('cuts off what lies beyond the paper', async () => {
    const page = await createRasterizer(300).draw(
      sheet({
        pieces: [],
        cuts: [],
        furniture: [
          { art: art([ring]), xMm: -20, yMm: -6 },
          { art: art([ring]), xMm: 190, yMm: 291 },
        ],
      }),
    )
    expect(inked(pixelBytes(page))).toBeGreaterThan(0)
  })

  it.each([72, 300, 600])(
    'paints the thinnest cut line black and at least a pixel thick at %i DPI',
    async dpi => {
      const cuts = [{ x1Mm: 0, y1Mm: 100.013, x2Mm: 210, y2Mm: 100.013, widthMm: 0.01 }]
      const page = await createRasterizer(dpi).draw(sheet({ pieces: [], furniture: [], cuts }))
      const bytes = pixelBytes(page)
      const column = Array.from({ length: page.heightPx }, (_, y) => bytes[y * page.widthPx + 50]!)
      expect(column.filter(grey => grey === 0)).toHaveLength(1)
      expect(column.filter(grey => grey !== 0 && grey !== 255)).toEqual([])
    },
  )

  it('shows a teacher’s picture whole inside its box', async () => {
    const bytes = await sharp({ create: { width: 400, height: 200, channels: 3, background: '#ff0000' } })
      .png()
      .toBuffer()
    const picture: ImageShape = {
      kind: 'image',
      bytes,
      mediaType: 'image/png',
      box: { xMm: 0, yMm: 0, widthMm: 40, heightMm: 40 },
      description: 'a red barge',
    }
    const page = await createRasterizer(100).draw(
      sheet({ pieces: [], cuts: [], furniture: [{ art: art([picture]), xMm: 50, yMm: 50 }] }),
    )
    expect(pixelAt(page, 70, 70)).toEqual([255, 0, 0])
    expect(pixelAt(page, 51, 70)).toEqual([255, 0, 0])
    expect(pixelAt(page, 70, 52)).toEqual([255, 255, 255])
  })

  it('leaves no specks at the clear edges of a picture', async () => {
    const leaf = '<path d="M40 5C80 40 70 90 40 110C10 90 0 40 40 5Z" fill="#777"/>'
    const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 80 120">${leaf}</svg>`
    const picture: ImageShape = {
      kind: 'image',
      bytes: svgInPixels(Buffer.from(svg))!,
      mediaType: 'image/png',
      box: { xMm: 0, yMm: 0, widthMm: 20, heightMm: 45 },
      description: 'a leaf',
    }
    const page = await createRasterizer(300).draw(
      sheet({ pieces: [], cuts: [], furniture: [{ art: art([picture]), xMm: 50.1, yMm: 50.1 }] }),
    )
    const grey = pixelBytes(page)
    expect(grey.some(pixel => pixel === 0x77)).toBe(true)
    expect(grey.filter(pixel => pixel < 0x70)).toHaveLength(0)
  })
})

function pixelAt(page: Pixels, xMm: number, yMm: number): number[] {
  const column = Math.floor((xMm / 210) * page.widthPx)
  const row = Math.floor((yMm / 297) * page.heightPx)
  const at = (row * page.widthPx + column) * page.channels
  return [...pixelBytes(page).subarray(at, at + page.channels)]
}
