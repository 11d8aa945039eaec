import { inflateSync } from 'node:zlib'
import fc from 'fast-check'
import { PNG } from 'pngjs'
import { describe, expect, it } from 'vitest'
import { pageShapes } from '../../../src/files/page/page-shapes.js'
import { bitString } from '../../../src/files/png/bit-string.js'
import { codedArts } from '../../../src/files/png/coded-arts.js'
import { codePage } from '../../../src/files/png/coded-page.js'
import type { ChunkData } from '../../../src/files/png/encode-png.js'
import { keptBands } from '../../../src/files/png/kept-bands.js'
import { createPngWriter } from '../../../src/files/png/png-writer.js'
import { createRasterizer } from '../../../src/files/raster/raster.js'
import type { Art } from '../../../src/pieces/piece.js'
import type { Sheet } from '../../../src/sheets/sheet.js'
import { art, blueBar, frame, marsh, reed, ring, sheet, triangle } from '../marsh-sheets.js'
import { pixelBytes } from '../page-pixels.js'

const dpi = 100
const rasterizer = createRasterizer(dpi)
const writer = createPngWriter(dpi)

interface Place {
  readonly art: Art
  readonly xMm: number
  readonly yMm: number
}

const tinted = art([{ kind: 'path', d: 'M-1 -1L31 -1L31 13L-1 13Z', fill: '#f2d9a0' }])
const inColour = art([triangle, blueBar], 'moth')

function sheetWith(furniture: readonly Place[], cuts: Sheet['cuts'] = []): Sheet {
  return sheet({ widthMm: 110, heightMm: 120, pieces: [], furniture, cuts })
}

/** The painted page, and what pngjs reads from the file, both as red, green, blue. */
async function bothWays(page: Sheet) {
  const painted = await rasterizer.draw(page)
  const { data } = PNG.sync.read(await writer.write(page))
  return { expected: inColours(pixelBytes(painted), painted.channels), read: inColours(data, 4) }
}

/** Three bytes a pixel, of one that says how light it is, of three, or of four of which the last says how opaque. */
function inColours(bytes: Uint8Array, channels: 1 | 3 | 4): Buffer {
  const pixels = bytes.length / channels
  const colours = Buffer.alloc(pixels * 3)
  for (let pixel = 0; pixel < pixels; pixel++)
    for (let colour = 0; colour < 3; colour++)
      colours[pixel * 3 + colour] = bytes[pixel * channels + (channels === 1 ? 0 : colour)]!
  return colours
}

async function isPutTogether(page: Sheet): Promise<boolean> {
  const prepared = await rasterizer.prepare(pageShapes(page))
  return codePage(prepared, codedArts()(prepared)) !== undefined
}

function bytesOf(rows: ChunkData | undefined): Buffer | undefined {
  if (rows === undefined) return undefined
  const bytes = Buffer.alloc(rows.length)
  rows.copyTo(bytes, 0)
  return bytes
}

const apart: readonly Place[] = [
  { art: reed, xMm: 5, yMm: 5 },
  { art: marsh, xMm: 5, yMm: 40 },
  { art: reed, xMm: 60, yMm: 41.3 },
]
const level = { x1Mm: 0, y1Mm: 60, x2Mm: 110, y2Mm: 60, widthMm: 0.2 }
const upright = { x1Mm: 50, y1Mm: 10, x2Mm: 50, y2Mm: 110, widthMm: 0.3 }

const pages: Readonly<Record<string, Sheet>> = {
  'of nothing': sheetWith([]),
  'of arts that stand apart': sheetWith(apart),
  'of one art inside the frame of another': sheetWith([
    { art: frame, xMm: 10, yMm: 10 },
    { art: art([ring]), xMm: 12, yMm: 11 },
  ]),
  'of arts that touch': sheetWith([...apart, { art: marsh, xMm: 6, yMm: 6 }]),
  'of one art beside another, pixel to pixel': sheetWith([
    { art: tinted, xMm: 10, yMm: 10 },
    { art: tinted, xMm: 42.1, yMm: 12 },
  ]),
  'with ink over a tint': sheetWith([
    { art: tinted, xMm: 20, yMm: 20 },
    { art: reed, xMm: 20, yMm: 20 },
  ]),
  'in colour': sheetWith([...apart, { art: inColour, xMm: 60, yMm: 80 }]),
  'with cut lines that cross, and run through an art': sheetWith(
    [...apart, { art: reed, xMm: 40, yMm: 90 }],
    [level, upright, { ...level, y1Mm: 100, y2Mm: 100, white: true }],
  ),
  'of arts that reach over every edge': sheetWith([
    { art: reed, xMm: -6, yMm: 30 },
    { art: reed, xMm: 98, yMm: 60 },
    { art: marsh, xMm: 40, yMm: -5 },
    { art: marsh, xMm: 40, yMm: 112 },
  ]),
}

const place = fc.record({
  art: fc.constantFrom(reed, marsh, frame, tinted, inColour),
  xMm: fc.double({ min: -20, max: 110, noNaN: true }),
  yMm: fc.double({ min: -20, max: 120, noNaN: true }),
})
const cut = fc.constantFrom(level, upright, { ...upright, x2Mm: 70 })
const anySheet = fc
  .tuple(fc.array(place, { maxLength: 6 }), fc.array(cut, { maxLength: 2 }))
  .map(([arts, cuts]) => sheetWith(arts, cuts))

describe('a page put together from the packed rows of its arts', () => {
  it.each(Object.entries(pages))('has the pixels of a painted one: %s', async (_, page) => {
    expect(await isPutTogether(page)).toBe(true)
    const { expected, read } = await bothWays(page)
    expect(read.equals(expected)).toBe(true)
  })

  // Programs that know how large a picture is do not look at it; zlib holds it against all that it unpacks.
  it.each(Object.entries(pages))('has the checksum of its rows (RFC 1950): %s', async (_, page) => {
    const prepared = await rasterizer.prepare(pageShapes(page))
    const { widthPx, heightPx, channels } = prepared
    const rows = inflateSync(bytesOf(codePage(prepared, codedArts()(prepared)))!)
    expect(rows.length).toBe(heightPx * (1 + widthPx * channels))
  })

  it('has them wherever arts and cuts lie', async () => {
    await fc.assert(
      fc.asyncProperty(anySheet, async page => {
        const { expected, read } = await bothWays(page)
        expect(read.equals(expected)).toBe(true)
      }),
      { numRuns: 25 },
    )
  })

  it('is the same file whatever was written before', async () => {
    for (const page of Object.values(pages))
      expect((await createPngWriter(dpi).write(page)).equals(await writer.write(page))).toBe(true)
  })

  it('is painted where it would be put together from few whole rows', async () => {
    const heaped = Array.from({ length: 12 }, (_, row) => ({ art: tinted, xMm: 5 + row, yMm: row * 9 }))
    expect(await isPutTogether(sheetWith(heaped))).toBe(false)
    const { expected, read } = await bothWays(sheetWith(heaped))
    expect(read.equals(expected)).toBe(true)
  })
})

describe('a page of which bands were coded before', () => {
  const heaped = sheetWith(
    Array.from({ length: 12 }, (_, row) => ({ art: tinted, xMm: 5 + row, yMm: row * 9 })),
  )
  /** Each page with one of its arts elsewhere, and as it was. */
  const changed = (page: Sheet): readonly Sheet[] => [
    page,
    {
      ...page,
      furniture: page.furniture.map((each, at) => (at === 0 ? { ...each, yMm: each.yMm + 7 } : each)),
    },
    { ...page, furniture: page.furniture.slice(1) },
    page,
  ]

  /** Coded by itself, and with what is kept. */
  async function allCoded(sheets: readonly Sheet[], keptBytes: number) {
    const codes = codedArts()
    const bands = keptBands(keptBytes)
    const coded: { whole: Buffer | undefined; inBands: Buffer | undefined }[] = []
    for (const each of sheets) {
      const prepared = await rasterizer.prepare(pageShapes(each))
      const placed = codes(prepared)
      const inBands = bytesOf(codePage(prepared, placed, bitString(), bands))
      coded.push({ whole: bytesOf(codePage(prepared, placed)), inBands })
    }
    return coded
  }

  it.each([2 ** 20, 2 ** 15, 2 ** 10])('is coded as by itself, %i bytes being kept', async keptBytes => {
    const coded = await allCoded([...Object.values(pages), heaped].flatMap(changed), keptBytes)
    for (const { whole, inBands } of coded) expect(inBands).toEqual(whole)
  })

  it('is so wherever arts and cuts lie', async () => {
    const property = fc.asyncProperty(anySheet, anySheet, async (one, other) => {
      for (const { whole, inBands } of await allCoded([...changed(one), ...changed(other)], 2 ** 20))
        expect(inBands).toEqual(whole)
    })
    await fc.assert(property, { numRuns: 15 })
  })

  it('is not coded again where nothing is another', async () => {
    const page = sheetWith([
      { art: marsh, xMm: 5, yMm: 80 },
      { art: reed, xMm: 5, yMm: 20 },
    ])
    const prepared = await rasterizer.prepare(pageShapes(page))
    const [low, high] = codedArts()(prepared)
    let read = 0
    const watched = new Proxy(low!.art, {
      get: (art, name) => {
        if (name === 'stretches') read += 1
        return Reflect.get(art, name)
      },
    })
    const bands = keptBands(2 ** 20)
    const isRead = (xOfLow: number, yOfHigh: number): boolean => {
      read = 0
      codePage(
        prepared,
        [
          { art: watched, x: xOfLow, y: low!.y },
          { ...high!, y: yOfHigh },
        ],
        bitString(),
        bands,
      )
      return read > 0
    }
    expect([isRead(low!.x, high!.y), isRead(low!.x, high!.y + 9), isRead(low!.x + 1, high!.y)]).toEqual([
      true,
      false,
      true,
    ])
  })
})
