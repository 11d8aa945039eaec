import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { describe, expect, it } from 'vitest'
import { drawTextLine } from '../../../src/pieces/text/text-line.js'
import type { ShapedRun } from '../../../src/pieces/typeface/shaped-run.js'
import { openTypeface, type Typeface } from '../../../src/pieces/typeface/typeface.js'
import { unpackFont } from '../../../src/pieces/typeface/woff.js'
import { drawWord } from '../../../src/pieces/word/word-art.js'
import { bundledTypeface, bundledTypefaces } from '../bundled-typefaces.js'
import { columnsOf, render, rowsOf } from '../pixels.js'

const andika = bundledTypeface('andika')
const lettersOf = (typeface: Typeface, text: string, splitLigaturesAt: readonly number[] = []) =>
  typeface.shape(text, { splitLigaturesAt }).glyphs.map(({ start, end }) => text.slice(start, end))

/** Places are sums, added up in another order. */
function alike(one: ShapedRun, other: ShapedRun): boolean {
  return (
    one.text === other.text &&
    Math.abs(one.widthEm - other.widthEm) < 1e-9 &&
    one.glyphs.length === other.glyphs.length &&
    one.glyphs.every((glyph, index) => {
      const { outline, xEm, yEm, start, end } = other.glyphs[index]!
      return (
        glyph.outline === outline &&
        Math.abs(glyph.xEm - xEm) < 1e-9 &&
        glyph.yEm === yEm &&
        glyph.start === start &&
        glyph.end === end
      )
    })
  )
}

describe.each(bundledTypefaces)('$family', typeface => {
  it('has an x as high in pixels as its metrics say, within a pixel', () => {
    const sizeMm = 20
    const dpi = 600
    const { art, xHeightMm } = drawWord({ typeface, word: 'x', spans: [], sizeMm })
    const rows = rowsOf(render(art.shapes, { widthMm: 24, heightMm: 24, xMm: 2, yMm: 2, dpi }))!
    const pixels = (xHeightMm / 25.4) * dpi
    expect(Math.abs(rows.last - rows.first + 1 - pixels)).toBeLessThanOrEqual(1)
  })

  it('keeps its ink within the box that a word claims, and fills it', () => {
    const dpi = 600
    const { art } = drawWord({ typeface, word: 'Fjord', spans: [], sizeMm: 12 })
    const picture = render(art.shapes, {
      widthMm: art.widthMm + 4,
      heightMm: art.heightMm + 4,
      xMm: 2,
      yMm: 2,
      dpi,
    })
    const [columns, rows] = [columnsOf(picture)!, rowsOf(picture)!]
    const toMm = (pixels: number): number => (pixels / dpi) * 25.4
    expect(toMm(columns.first)).toBeCloseTo(2, 1)
    expect(toMm(columns.last + 1)).toBeCloseTo(2 + art.widthMm, 1)
    expect(toMm(rows.first)).toBeCloseTo(2, 1)
    expect(toMm(rows.last + 1)).toBeCloseTo(2 + art.heightMm, 1)
  })

  it('sets letters apart evenly when asked, and then joins none', () => {
    const word = 'waffle'
    const wide = typeface.shape(word, { letterSpacingEm: 0.1 })
    const split = typeface.shape(word, { splitLigaturesAt: [1, 2, 3, 4, 5] })
    expect(wide.glyphs).toHaveLength(6)
    wide.glyphs.forEach((glyph, index) => {
      expect(glyph.xEm - split.glyphs[index]!.xEm).toBeCloseTo(0.1 * index, 6)
    })
    expect(wide.widthEm - split.widthEm).toBeCloseTo(0.5, 6)
  })

  it.each(['regular', 'bold'] as const)(
    'has the same letters in a %s line whether words are shaped one by one or all at once',
    weight => {
      const characters = Array.from({ length: 0x2200 - 0x21 }, (_, index) =>
        String.fromCodePoint(0x21 + index),
      )
      const has = characters.filter(each => typeface.missing(each).length === 0)
      const lines = has.flatMap(each => [`x ${each}x`, `V${each} ${each}V`, `${each} 1 ${each}`])
      // A split that no letter lies across changes nothing, but has the line shaped at once.
      const differing = lines.filter(
        line =>
          !alike(
            typeface.shape(line, { weight }),
            typeface.shape(line, { weight, splitLigaturesAt: [line.length] }),
          ),
      )
      expect(has.length).toBeGreaterThan(180)
      expect(differing).toEqual([])
    },
  )

  it('tells how wide a line is as it is shaped', () => {
    const line = 'The heron waits, and 2 frogs leap into the mud.'
    expect(typeface.widthEm(line)).toBe(typeface.shape(line).widthEm)
    expect(typeface.widthEm(line, 'bold')).toBe(typeface.shape(line, { weight: 'bold' }).widthEm)
  })

  it('sets two blanks apart, so that they can be counted', () => {
    const [first, second] = typeface.shape('__').glyphs
    expect(second!.xEm - first!.xEm - typeface.shape('_').widthEm).toBeGreaterThan(0.08)
  })

  it('names the characters that it lacks, each once', () => {
    expect(typeface.missing('café ⶀmarsh ⶀ')).toEqual(['ⶀ'])
  })

  it('has a bold weight', () => {
    expect(typeface.hasBold).toBe(true)
    expect(typeface.shape('marsh', { weight: 'bold' })).not.toEqual(typeface.shape('marsh'))
  })
})

describe('shaping', () => {
  it('joins letters as the face does', () => {
    expect(lettersOf(andika, 'fish')).toEqual(['fi', 's', 'h'])
    expect(lettersOf(andika, 'puffin')).toEqual(['p', 'u', 'ffi', 'n'])
  })

  it('breaks a ligature that a mark cuts through, and no other', () => {
    expect(lettersOf(andika, 'puffin', [2, 4])).toEqual(['p', 'u', 'f', 'f', 'i', 'n'])
    expect(lettersOf(andika, 'fluff', [2])).toEqual(['fl', 'u', 'ff'])
  })

  it('keeps a ligature that lies within a mark', () => {
    expect(lettersOf(andika, 'fish', [0, 2])).toEqual(['fi', 's', 'h'])
  })

  it('kerns', () => {
    const atkinson = bundledTypeface('atkinson-hyperlegible')
    const apart = atkinson.shape('T').widthEm + atkinson.shape('o').widthEm
    expect(atkinson.shape('To').widthEm).toBeLessThan(apart)
  })

  it('takes letters beyond Latin 1 from the further file, in their place', () => {
    expect(lettersOf(andika, 'cőr')).toEqual(['c', 'ő', 'r'])
    expect(andika.missing('ő')).toEqual([])
    expect(bundledTypeface('opendyslexic').missing('é')).toEqual([])
  })
})

describe('font files', () => {
  const packed = readFileSync(
    createRequire(import.meta.url).resolve('@fontsource/andika/files/andika-latin-400-normal.woff'),
  )

  it('unpacks WOFF to a font that gives back the same outlines', () => {
    const plain = unpackFont(packed)!
    const again = openTypeface({ name: 'andika', family: 'Andika', regular: plain })
    if ('unreadable' in again) throw new Error(again.unreadable)
    expect(again.shape('marsh')).toEqual(andika.shape('marsh'))
    expect(again.hasBold).toBe(false)
  })

  it('says why it cannot use a file that is no font', () => {
    const text = new TextEncoder().encode('Heron Lane School, Room 7, week of the marsh')
    expect(openTypeface({ name: 'x', family: 'x', regular: text })).toEqual({
      unreadable: 'the file is not a TTF, OTF or WOFF font',
    })
    expect(openTypeface({ name: 'x', family: 'x', regular: new Uint8Array() })).toHaveProperty('unreadable')
  })

  it('does not take WOFF2 for a font it can read', () => {
    const woff2 = readFileSync(
      createRequire(import.meta.url).resolve('@fontsource/andika/files/andika-latin-400-normal.woff2'),
    )
    expect(unpackFont(woff2)).toBeUndefined()
  })
})

describe('a line of text', () => {
  it('is as wide as the face sets it and stands on its baseline', () => {
    const { art, baselineMm } = drawTextLine({ typeface: andika, text: 'Otters, week 3', sizeMm: 4 })
    expect(art.widthMm).toBeCloseTo(andika.shape('Otters, week 3').widthEm * 4, 6)
    expect(art.text).toEqual([
      { text: 'Otters, week 3', xMm: 0, baselineMm, widthMm: art.widthMm, sizeMm: 4 },
    ])
  })

  it('is nothing where there is no text', () => {
    expect(drawTextLine({ typeface: andika, text: '', sizeMm: 4 }).art.shapes).toEqual([])
  })
})
