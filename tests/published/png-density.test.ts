/**
 * PNG Specification, Third Edition (W3C), §11.3.4.3: pHYs holds pixels per unit for x and y and a unit, 1 being
 * the metre. An inch is 0.0254 m, so 300 DPI are 300 / 0.0254 = 11811.02…, rounded 11811.
 */
import sharp from 'sharp'
import { describe, expect, it } from 'vitest'
import { createRasterizer } from '../../src/files/raster/raster.js'
import type { Sheet } from '../../src/sheets/sheet.js'
import { wholePng } from '../files/png/whole-png.js'

const blank: Sheet = {
  number: 1,
  side: 'front',
  kind: 'cover',
  title: 'Blank',
  widthMm: 210,
  heightMm: 297,
  pieces: [],
  cuts: [],
  furniture: [],
}

/** Reads the chunk from the bytes themselves, by its name and the layout that the specification gives. */
function physicalSize(file: Buffer): { x: number; y: number; unit: number } {
  const at = file.indexOf('pHYs', 0, 'latin1')
  expect(file.readUInt32BE(at - 4)).toBe(9)
  expect(at).toBeLessThan(file.indexOf('IDAT', 0, 'latin1'))
  return { x: file.readUInt32BE(at + 4), y: file.readUInt32BE(at + 8), unit: file.readUInt8(at + 12) }
}

describe('the physical size in a PNG', () => {
  it.each([
    [72, 2835],
    [96, 3780],
    [150, 5906],
    [300, 11811],
    [600, 23622],
    [1200, 47244],
  ])('is, at %i DPI, %i pixels per metre', async (dpi, pixelsPerMetre) => {
    const file = wholePng({ widthPx: 1, heightPx: 1, channels: 1, bytes: Uint8Array.of(255, 0, 0, 0) }, dpi)
    expect(physicalSize(file)).toEqual({ x: pixelsPerMetre, y: pixelsPerMetre, unit: 1 })
  })

  it('is read back as 300 DPI by sharp', async () => {
    const file = wholePng({ widthPx: 1, heightPx: 1, channels: 3, bytes: Uint8Array.of(1, 2, 3, 0) }, 300)
    expect((await sharp(file).metadata()).density).toBe(300)
  })
})

describe('the size in pixels', () => {
  // A4: 210 / 25.4 × 300 = 2480.3, 297 / 25.4 × 300 = 3507.9; Letter: 8.5 × 300 and 11 × 300 exactly.
  it.each([
    ['A4', 210, 297, 300, 2480, 3508],
    ['Letter', 215.9, 279.4, 300, 2550, 3300],
    ['Letter', 215.9, 279.4, 72, 612, 792],
    ['A4', 210, 297, 72, 595, 842],
    ['A5', 148, 210, 600, 3496, 4961],
  ])('of %s, %d × %d mm at %i DPI, is %i × %i', async (_name, widthMm, heightMm, dpi, widthPx, heightPx) => {
    const page = await createRasterizer(dpi).draw({ ...blank, widthMm, heightMm })
    expect([page.widthPx, page.heightPx]).toEqual([widthPx, heightPx])
  })
})
