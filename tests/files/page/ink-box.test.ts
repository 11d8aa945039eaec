import { describe, expect, it } from 'vitest'
import { shapeInkBox } from '../../../src/files/page/ink-box.js'
import { pathBox } from '../../../src/files/page/path-data.js'
import { moveArt } from '../../../src/pieces/art/move-art.js'
import { lettersOf } from '../../../src/pieces/art/placed-letters.js'
import type { PathShape, Shape } from '../../../src/pieces/piece.js'
import { drawWords } from '../../../src/pieces/text/words-of-line.js'
import { bundledTypeface } from '../../pieces/bundled-typefaces.js'

const texts = ['reed', 'By the pond, 14 words', 'quagmire', '½ inch', 'ghostly jump', '  ']

function wordsIn(name: Parameters<typeof bundledTypeface>[0], sizeMm: number): readonly PathShape[] {
  const typeface = bundledTypeface(name)
  return texts.flatMap(text =>
    drawWords({ typeface, text, sizeMm, xMm: 0.1, baselineMm: 7.3 }).map(({ outline }) => outline),
  )
}

function moved(shapes: readonly Shape[]): readonly Shape[] {
  const size = { widthMm: 90, heightMm: 20 }
  return moveArt({ ...size, shapes, text: [] }, 1.2345, -0.0305, size).shapes
}

function boxOfPath(shape: Shape) {
  return shape.kind === 'path' ? pathBox(shape.d) : undefined
}

describe('the box of letters is that of their path, to the last digit', () => {
  const words = (['andika', 'opendyslexic'] as const).flatMap(name =>
    [1.9, 3.175, 24.61].flatMap(sizeMm => wordsIn(name, sizeMm)),
  )

  it('as they were drawn', () => {
    expect(words.length).toBeGreaterThan(60)
    expect(words.every(word => lettersOf(word) !== undefined)).toBe(true)
    expect(words.map(shapeInkBox)).toEqual(words.map(boxOfPath))
  })

  it('and where they were moved, which rounds them once more', () => {
    expect(moved(words).map(shapeInkBox)).toEqual(moved(words).map(boxOfPath))
  })
})
