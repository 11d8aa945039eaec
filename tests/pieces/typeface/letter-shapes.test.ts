import { describe, expect, it } from 'vitest'
import { bundledTypefaces } from '../../../fonts/index.js'
import { letterShapesOf } from '../../../src/pieces/typeface/letter-shapes.js'
import { drawWord } from '../../../src/pieces/word/word-art.js'
import { bundledTypeface } from '../bundled-typefaces.js'
import { render } from '../pixels.js'

/** How many strokes a line down the middle of the letter crosses: two in a schoolbook a, three in a book a. */
function strokesDownTheMiddle(face: string, letter: string): number {
  const { art } = drawWord({ typeface: bundledTypeface(face), word: letter, spans: [], sizeMm: 20 })
  const picture = render(art.shapes, { ...art, heightMm: art.heightMm + 2, xMm: 0, yMm: 1, dpi: 300 })
  const middle = Math.floor(picture.width / 2)
  const inked = Array.from(
    { length: picture.height },
    (_, y) => picture.values[y * picture.width + middle]! >= 128,
  )
  return inked.filter((ink, y) => ink && inked[y - 1] !== true).length
}

describe('what the list of fonts says of a and g', () => {
  it.each(bundledTypefaces)('$family', ({ name, letterShapes }) => {
    expect(strokesDownTheMiddle(name, 'a')).toBe(letterShapes.a === 'schoolbook' ? 2 : 3)
    expect(strokesDownTheMiddle(name, 'g')).toBe(letterShapes.g === 'schoolbook' ? 3 : 4)
  })

  it.each(bundledTypefaces)(
    '$family, told from its outlines as for a font of the teacher’s own',
    ({ name, letterShapes }) => {
      expect(letterShapesOf(bundledTypeface(name))).toEqual(letterShapes)
    },
  )
})

describe('what the list of fonts says of the height of x', () => {
  it.each(bundledTypefaces)('$family', ({ name, xHeight }) => {
    expect(bundledTypeface(name).metrics.xHeight.toFixed(2)).toBe(xHeight.toFixed(2))
  })
})
