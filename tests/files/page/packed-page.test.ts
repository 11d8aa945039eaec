import { describe, expect, it } from 'vitest'
import { pagePacking, pageUnpacking } from '../../../src/files/page/packed-page.js'
import { type PageShapes, pageShapes } from '../../../src/files/page/page-shapes.js'
import { createPngWriter } from '../../../src/files/png/png-writer.js'
import type { Art, PathShape } from '../../../src/pieces/piece.js'
import { art, blueBar, card, reed, ring, sheet, triangle } from '../marsh-sheets.js'

const word: PathShape = { kind: 'path', d: 'M0 0L4 0L4 -2Z', fill: '#111111' }
const line: PathShape = {
  kind: 'path',
  d: 'M0 0L4 0L4 -2ZM6 0L10 0L10 -2Z',
  fill: '#111111',
  words: [
    { outline: word, xMm: 0, yMm: 0 },
    { outline: word, xMm: 6, yMm: 0 },
  ],
}

const lines: Art = art([line, triangle, blueBar])
const cuts = [
  { x1Mm: 0, y1Mm: 60, x2Mm: 110, y2Mm: 60, widthMm: 0.2 },
  { x1Mm: 0, y1Mm: 70, x2Mm: 110, y2Mm: 90, widthMm: 0.2, white: true as const },
]
const turned = { piece: card(1, reed), xMm: 10, yMm: 60, turn: 180 as const }
const page = pageShapes(
  sheet({
    widthMm: 110,
    heightMm: 120,
    pieces: [turned],
    cuts,
    furniture: [
      { art: lines, xMm: 10 / 3, yMm: 20.1 },
      { art: art([ring]), xMm: 60, yMm: 20 },
    ],
  }),
)

/** As another thread would have it. */
function sent<T>(value: T): T {
  return structuredClone(value)
}

function shapesOf({ drawings }: PageShapes) {
  return drawings.flatMap(({ shapes }) => shapes.map(({ shape }) => shape))
}

describe('a packed page', () => {
  it('comes out as it was, with the words of its lines in place of the lines', () => {
    const unpacked = pageUnpacking().unpack(sent(pagePacking().pack(page)))
    expect(unpacked).toEqual(page)
  })

  it('has the same picture', async () => {
    const unpacked = pageUnpacking().unpack(sent(pagePacking().pack(page)))
    const [here, there] = [createPngWriter(100), createPngWriter(100)]
    expect((await there.writeShapes(unpacked)).equals(await here.writeShapes(page))).toBe(true)
  })

  it('brings a shape once, and has the same one on every page', () => {
    const packing = pagePacking()
    const unpacking = pageUnpacking()
    const [first, second] = [packing.pack(page), packing.pack(page)]
    expect([first.firsts.length, second.firsts.length]).toEqual([new Set(shapesOf(page)).size, 0])
    const shapes = shapesOf(unpacking.unpack(sent(first)))
    expect(shapesOf(unpacking.unpack(sent(second))).every((shape, index) => shape === shapes[index])).toBe(
      true,
    )
  })

  it('brings no more of a word than what it looks like', () => {
    const withMore: PathShape = { ...line, words: [{ outline: { ...word, words: [] }, xMm: 0, yMm: 0 }] }
    const [first] = pagePacking().pack(
      pageShapes(sheet({ pieces: [], furniture: [{ art: art([withMore]), xMm: 0, yMm: 0 }] })),
    ).firsts
    expect(first).toEqual([0, word])
  })
})

describe('what a packing knows', () => {
  const without: PageShapes = { ...page, drawings: [] }

  it('is kept while it is on a page from run to run', () => {
    const packing = pagePacking()
    packing.pack(page)
    for (const _ of [1, 2, 3]) {
      expect(packing.letGo()).toEqual([])
      expect(packing.pack(page).firsts).toEqual([])
    }
  })

  it('goes after a run without it, is told to be forgotten, and comes again under another number', () => {
    const packing = pagePacking()
    const unpacking = pageUnpacking()
    const [numbers] = [packing.pack(page).firsts.map(([number]) => number)]
    expect(packing.letGo()).toEqual([])
    packing.pack(without)
    const gone = packing.letGo()
    expect(gone).toEqual(numbers)
    unpacking.forget(gone)
    const again = packing.pack(page)
    expect(again.firsts.map(([number]) => number)).toEqual(numbers.map(number => number + numbers.length))
    expect(unpacking.unpack(sent(again))).toEqual(page)
  })
})
