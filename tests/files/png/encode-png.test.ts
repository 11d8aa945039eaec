import fc from 'fast-check'
import { PNG } from 'pngjs'
import sharp from 'sharp'
import { describe, expect, it } from 'vitest'
import { encodePng } from '../../../src/files/png/encode-png.js'
import { type Pixels, rowBytes } from '../../../src/files/png/pixels.js'
import { runPacker } from '../../../src/files/png/run-packer.js'
import { wholePng } from './whole-png.js'

const pixels = fc
  .record({
    widthPx: fc.integer({ min: 1, max: 40 }),
    heightPx: fc.integer({ min: 1, max: 40 }),
    channels: fc.constantFrom(1 as const, 3 as const),
  })
  .chain(size =>
    fc
      .uint8Array({
        minLength: rowBytes(size.widthPx, size.channels) * size.heightPx,
        maxLength: rowBytes(size.widthPx, size.channels) * size.heightPx,
      })
      .map((bytes): Pixels => ({ ...size, bytes })),
  )

describe('a PNG file', () => {
  it('gives back every pixel to pngjs and to sharp', async () => {
    await fc.assert(
      fc.asyncProperty(pixels, async picture => {
        const file = wholePng(picture, 300)
        const expected = rgbOf(picture)
        const { data, width, height } = PNG.sync.read(file)
        expect([width, height]).toEqual([picture.widthPx, picture.heightPx])
        expect(Buffer.from(data.filter((_, at) => at % 4 !== 3)).equals(expected)).toBe(true)
        const bySharp = await sharp(file).toColourspace('srgb').removeAlpha().raw().toBuffer()
        expect(bySharp.equals(expected)).toBe(true)
      }),
      { numRuns: 100 },
    )
  })

  it('is the same file whatever was packed before', () => {
    const packer = runPacker()
    fc.assert(
      fc.property(pixels, picture => {
        expect(encodePng(picture, 300, packer).equals(wholePng(picture, 300))).toBe(true)
      }),
      { numRuns: 30 },
    )
  })

  it('keeps a grey page to one channel of 8 bits', async () => {
    const file = wholePng({ widthPx: 2, heightPx: 1, channels: 1, bytes: Uint8Array.of(0, 255, 0, 0) }, 300)
    const { channels, depth, isPalette } = await sharp(file).metadata()
    expect({ channels, depth, isPalette }).toEqual({ channels: 1, depth: 'uchar', isPalette: false })
  })

  it('packs a white Letter page at 300 DPI into a few kilobytes', () => {
    const bytes = new Uint8Array(rowBytes(2550, 1) * 3300).fill(255)
    expect(wholePng({ widthPx: 2550, heightPx: 3300, channels: 1, bytes }, 300).length).toBeLessThan(50_000)
  })
})

function rgbOf({ bytes, widthPx, heightPx, channels }: Pixels): Buffer {
  const rows = Array.from({ length: heightPx }, (_, y) => {
    const start = y * rowBytes(widthPx, channels)
    const row = Array.from(bytes.subarray(start, start + widthPx * channels))
    return channels === 3 ? row : row.flatMap(grey => [grey, grey, grey])
  })
  return Buffer.from(rows.flat())
}
