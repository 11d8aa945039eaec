import { describe, expect, it } from 'vitest'
import { pathBox } from '../../../src/files/page/path-data.js'
import { moveArt } from '../../../src/pieces/art/move-art.js'
import { pathTextAt } from '../../../src/pieces/art/path-text.js'
import { lettersOf, type PlacedLetters } from '../../../src/pieces/art/placed-letters.js'
import { recolourer } from '../../../src/pieces/art/recolour.js'
import type { MarkSpan } from '../../../src/pieces/marks/styled-mark.js'
import type { Art, Shape } from '../../../src/pieces/piece.js'
import { drawTextLine } from '../../../src/pieces/text/text-line.js'
import { drawWords } from '../../../src/pieces/text/words-of-line.js'
import { drawWord } from '../../../src/pieces/word/word-art.js'
import { bundledTypeface } from '../bundled-typefaces.js'

const typeface = bundledTypeface('andika')

function outlineOf({ run, sizeMm, xMm, yMm }: PlacedLetters): string {
  return run.glyphs
    .map(({ outline, xEm, yEm }) =>
      pathTextAt(outline.commands, sizeMm, { xMm: xMm + xEm * sizeMm, yMm: yMm + yEm * sizeMm }),
    )
    .join('')
}

function drawnLetters({ shapes }: { readonly shapes: readonly Shape[] }) {
  return shapes.flatMap(shape => {
    const letters = shape.kind === 'path' ? lettersOf(shape) : undefined
    return shape.kind === 'path' && letters !== undefined ? [{ shape, letters }] : []
  })
}

function lettersIn({ shapes }: Art): readonly PlacedLetters[] {
  const outlines = shapes.flatMap(shape =>
    shape.kind === 'path' ? (shape.words?.map(({ outline }) => outline) ?? [shape]) : [],
  )
  return drawnLetters({ shapes: outlines }).map(({ letters }) => letters)
}

function word(text: string, looks: object = {}): Art {
  const range = { start: 1, end: 3 }
  const mark = { mark: { place: { file: 'week.yaml' }, target: { kind: 'letters', letters: 'x' } as const } }
  const span: MarkSpan = {
    mark: { ...mark, index: 0, descenders: 'clear', assigned: false, ...looks },
    ranges: [range],
  }
  return drawWord({ typeface, word: text, spans: [span], sizeMm: 9 }).art
}

describe('the letters that a shape was drawn from', () => {
  it.each([
    [
      'a word of running text',
      {
        widthMm: 30,
        heightMm: 9,
        text: [],
        shapes: drawWords({ typeface, text: 'quagmire', sizeMm: 4, xMm: 2, baselineMm: 6 }).map(
          ({ outline }) => outline,
        ),
      },
    ],
    ['a word of a card', word('heron')],
    ['a word opened for an outline', word('heron', { outline: 'oval' })],
    ['the plain letters beside hollow ones', word('heron', { outline: 'hollow' })],
  ])('draw its outline again: %s', (_, art) => {
    const shapes = drawnLetters(art)
    expect(shapes).toHaveLength(1)
    for (const { shape, letters } of shapes) expect(outlineOf(letters)).toBe(shape.d)
  })

  it('move with it', () => {
    const moved = moveArt(word('heron'), 12.5, 7.25, { widthMm: 60, heightMm: 30 })
    const [drawn] = drawnLetters(moved)
    const [box, again] = [pathBox(drawn!.shape.d)!, pathBox(outlineOf(drawn!.letters))!]
    expect(again.xMm).toBeCloseTo(box.xMm, 2)
    expect(again.yMm).toBeCloseTo(box.yMm, 2)
  })

  it('stay the same in other colours, in a line of text too', () => {
    const size = { widthMm: 60, heightMm: 30 }
    const recolour = recolourer({ ink: '#ffffff', ground: '#000000' })
    const line = drawTextLine({ typeface, text: 'heron and reed', sizeMm: 4 }).art
    for (const art of [word('heron'), line]) {
      const [, placed] = recolour([{ art, xMm: 0, yMm: 0 }], size)
      expect(lettersIn(placed!.art)).toEqual(lettersIn(art))
      expect(lettersIn(art).length).toBeGreaterThan(0)
    }
  })

  it('are none of a hollow letter’s', () => {
    const hollow = word('heron', { outline: 'hollow' })
    const letters = drawnLetters(hollow)[0]!.letters.run.glyphs.map(({ start }) => start)
    expect(letters).toEqual([0, 3, 4])
  })
})
