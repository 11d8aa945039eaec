import { describe, expect, it } from 'vitest'
import { defaultTypeface } from '../../../fonts/index.js'
import { loadTypeface } from '../../../fonts/load-typeface.js'
import { readPath } from '../../../src/files/page/path-data.js'
import { createRasterizer } from '../../../src/files/raster/raster.js'
import type { PathShape, Shape } from '../../../src/pieces/piece.js'
import { drawTextLine, type TextLineRequest } from '../../../src/pieces/text/text-line.js'
import type { Typeface } from '../../../src/pieces/typeface/typeface.js'
import { sheet } from '../../files/marsh-sheets.js'
import { pixelBytes } from '../../files/page-pixels.js'

function loadedAnew(): Typeface {
  const loaded = loadTypeface({ name: defaultTypeface, place: { file: 'week.yaml' } })
  if (!loaded.ok) throw new Error('the default typeface cannot be read')
  return loaded.value
}
const typeface = loadedAnew()

function lineOf(text: string, change: Partial<TextLineRequest> = {}): PathShape {
  const [shape] = drawTextLine({ typeface, text, sizeMm: 3.5, ...change }).art.shapes
  if (shape?.kind !== 'path') throw new Error(`${text} has no outline`)
  return shape
}

const wordsOf = (text: string, change?: Partial<TextLineRequest>) => lineOf(text, change).words ?? []

describe('a line of text', () => {
  it('is its words one after the other, each moved to its place', () => {
    const line = lineOf('Along the marsh · bingo · 5 of 30')
    expect(line.words).toHaveLength(9)
    const inPlace = line.words!.flatMap(({ outline, xMm, yMm }) =>
      readPath(outline.d).numbers.map((number, index) => number + (index % 2 === 0 ? xMm : yMm)),
    )
    const drawn = readPath(line.d).numbers
    expect(inPlace).toHaveLength(drawn.length)
    // Both are rounded to a thousandth of a millimetre.
    expect(Math.max(...inPlace.map((number, index) => Math.abs(number - drawn[index]!)))).toBeLessThan(
      0.00101,
    )
  })

  it('is held in words alone, and put together when it is asked for', () => {
    expect(Object.getOwnPropertyDescriptor(lineOf('Along the marsh'), 'd')?.value).toBe(undefined)
  })

  it('takes the words that stood in another line, wherever they stand', () => {
    const known = wordsOf('Along the marsh · bingo · 5 of 30').map(({ outline }) => outline)
    const isTaken = wordsOf('Further along the marsh · bingo · 12 of 30').map(({ outline }) =>
      known.includes(outline),
    )
    expect(isTaken).toEqual([false, false, true, true, true, true, true, false, true, true])
  })

  it('has the same letters in a word whatever was added up before it', () => {
    // Each in a typeface of its own, so that neither takes the word from the other.
    const [alone, far] = ['marsh', `${'reed, heron; '.repeat(9)}marsh`].map(
      text => wordsOf(text, { typeface: loadedAnew(), sizeMm: 3.3333 }).at(-1)!.outline.d,
    )
    expect(far).toBe(alone)
  })

  it.each<[string, Partial<TextLineRequest>]>([
    ['size', { sizeMm: 3.6 }],
    ['weight', { weight: 'bold' }],
    ['colour', { color: '#505050' }],
  ])('takes none of another %s', (_, change) => {
    const plain = wordsOf('Along the marsh').map(({ outline }) => outline)
    expect(wordsOf('Along the marsh', change).filter(({ outline }) => plain.includes(outline))).toEqual([])
  })
})

describe('a line in pixels', () => {
  const pixelsOf = async (shape: Shape) => {
    const furniture = [{ art: { widthMm: 90, heightMm: 6, shapes: [shape], text: [] }, xMm: 20.03, yMm: 3.1 }]
    return pixelBytes(
      await createRasterizer(300).draw(
        sheet({ widthMm: 120, heightMm: 12, pieces: [], cuts: [], furniture }),
      ),
    )
  }

  it('has each word as it is alone, its origin on a whole pixel', async () => {
    const { words = [] } = lineOf('A grown-up works the trimmer, and latches the blade.', { sizeMm: 4.1 })
    const inLine = await pixelsOf({ ...words[0]!.outline, words })
    const alone = await Promise.all(words.map(word => pixelsOf({ ...word.outline, words: [word] })))
    const together = alone[0]!.map((_, index) => Math.min(...alone.map(page => page[index]!)))
    expect(Buffer.compare(inLine, together)).toBe(0)
    expect(inLine.filter(grey => grey < 128).length).toBeGreaterThan(2000)
  })

  it('has each word within half a pixel of its place', async () => {
    const line = lineOf('A grown-up works the trimmer, and latches the blade.', { sizeMm: 4.1 })
    const { words: _, ...whole } = line
    const [inWords, inOne] = [await pixelsOf(line), await pixelsOf(whole)]
    // Half a pixel moves at most half of the ink along an upright edge into the next pixel.
    const moved = inWords.reduce((sum, grey, index) => sum + Math.abs(grey - inOne[index]!), 0)
    const ink = inOne.reduce((sum, grey) => sum + 255 - grey, 0)
    expect(moved / ink).toBeLessThan(0.35)
    expect(Math.abs(inWords.reduce((sum, grey) => sum + 255 - grey, 0) / ink - 1)).toBeLessThan(0.01)
  })
})
