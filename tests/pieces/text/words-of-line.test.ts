import { describe, expect, it } from 'vitest'
import { defaultTypeface } from '../../../fonts/index.js'
import { loadTypeface } from '../../../fonts/load-typeface.js'
import { createRasterizer } from '../../../src/files/raster/raster.js'
import type { PathShape } from '../../../src/pieces/piece.js'
import { drawTextLine, type TextLineRequest } from '../../../src/pieces/text/text-line.js'
import { sheet } from '../../files/marsh-sheets.js'
import { pixelBytes } from '../../files/page-pixels.js'

const loaded = loadTypeface({ name: defaultTypeface, place: { file: 'week.yaml' } })
if (!loaded.ok) throw new Error('the default typeface cannot be read')
const typeface = loaded.value

function lineOf(text: string, change: Partial<TextLineRequest> = {}): PathShape {
  const [shape] = drawTextLine({ typeface, text, sizeMm: 3.5, ...change }).art.shapes
  if (shape?.kind !== 'path') throw new Error(`${text} has no outline`)
  return shape
}

const wordsOf = (text: string, change?: Partial<TextLineRequest>) => lineOf(text, change).words ?? []

describe('a line of text', () => {
  it('is its words one after the other', () => {
    const line = lineOf('Along the marsh · bingo · 5 of 30')
    expect(line.words).toHaveLength(9)
    expect(line.words!.map(({ d }) => d).join('')).toBe(line.d)
  })

  it('is held in words alone, and put together when it is asked for', () => {
    expect(Object.getOwnPropertyDescriptor(lineOf('Along the marsh'), 'd')?.value).toBe(undefined)
  })

  it('is one outline alone where it is one word', () => {
    expect(lineOf('marsh').words).toBe(undefined)
  })

  it('takes the words that stand in the same place from the line before', () => {
    const [five, twelve] = [
      wordsOf('Along the marsh · bingo · 5 of 30'),
      wordsOf('Along the marsh · bingo · 12 of 30'),
    ]
    const isTaken = twelve.map(word => five.includes(word))
    expect(isTaken).toEqual([true, true, true, true, true, true, false, false, false])
  })

  it.each<[string, Partial<TextLineRequest>]>([
    ['size', { sizeMm: 3.6 }],
    ['weight', { weight: 'bold' }],
    ['colour', { color: '#505050' }],
  ])('takes none of another %s', (_, change) => {
    const plain = wordsOf('Along the marsh')
    expect(wordsOf('Along the marsh', change).filter(word => plain.includes(word))).toEqual([])
  })
})

describe('a line in pixels', () => {
  it('is the same word by word as in one', async () => {
    const line = lineOf('A grown-up works the trimmer, and latches the blade.', { sizeMm: 4.1 })
    const { words: _, ...whole } = line
    const [inWords, inOne] = await Promise.all(
      [line, whole].map(async shape => {
        const furniture = [
          { art: { widthMm: 90, heightMm: 6, shapes: [shape], text: [] }, xMm: 20.03, yMm: 30 },
        ]
        return pixelBytes(await createRasterizer(300).draw(sheet({ pieces: [], cuts: [], furniture })))
      }),
    )
    expect(Buffer.compare(inWords!, inOne!)).toBe(0)
    expect(inOne!.filter(grey => grey < 128).length).toBeGreaterThan(2000)
  })
})
