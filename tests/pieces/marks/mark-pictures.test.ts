import { describe, expect, it } from 'vitest'
import { soundShapes, soundSpans } from '../../../src/pieces/marks/sound-marks.js'
import type { MarkSpan, StyledMark } from '../../../src/pieces/marks/styled-mark.js'
import { lineNames, outlineNames } from '../../../src/pieces/marks/styles.js'
import { drawWord } from '../../../src/pieces/word/word-art.js'
import { bundledTypeface } from '../bundled-typefaces.js'
import { expectedPicture } from '../expected-picture.js'

const typeface = bundledTypeface('andika')
const black = '#010101'

/** The word's marks in black over the boxes of its letters. */
function pictureOf(word: string, spans: readonly MarkSpan[]): string {
  const { art, letterInk } = drawWord({ typeface, word, spans, sizeMm: 6, color: '#aaaaaa' })
  const shapes = art.shapes.filter(
    shape => shape.kind === 'path' && (shape.fill === black || shape.stroke?.color === black),
  )
  return expectedPicture({ title: word, art, shapes, letters: letterInk })
}

function markOf(looks: Partial<StyledMark>): StyledMark {
  const target = { kind: 'letters', letters: 'x' } as const
  return {
    mark: { place: { file: 'plan.yaml' }, target },
    index: 0,
    color: black,
    descenders: 'clear',
    assigned: false,
    ...looks,
  }
}

describe('how a mark looks', () => {
  it.each(lineNames.filter(line => line !== 'slash'))('the line %s under ee of reed', async line => {
    const picture = pictureOf('reed', [{ mark: markOf({ line }), ranges: [{ start: 1, end: 3 }] }])
    await expect(picture).toMatchFileSnapshot(`pictures/line-${line}.svg`)
  })

  it.each(outlineNames)('the outline %s on ee of reed', async outline => {
    const picture = pictureOf('reed', [{ mark: markOf({ outline }), ranges: [{ start: 1, end: 3 }] }])
    await expect(picture).toMatchFileSnapshot(`pictures/outline-${outline}.svg`)
  })

  it.each(['bracket', 'arc'] as const)('the %s that joins a and e of lake', async link => {
    const ranges = [
      { start: 1, end: 2 },
      { start: 3, end: 4 },
    ] as const
    const picture = pictureOf('lake', [{ mark: markOf({ line: 'double', link }), ranges }])
    await expect(picture).toMatchFileSnapshot(`pictures/link-${link}.svg`)
  })

  it('a slash through the k of knot', async () => {
    const ranges = [{ start: 0, end: 2 }] as const
    const spans = [{ mark: markOf({ line: 'slash' }), ranges, struck: [{ start: 0, end: 1 }] }]
    await expect(pictureOf('knot', spans)).toMatchFileSnapshot('pictures/slash-through-the-silent-letter.svg')
  })

  it('neighbours: three lines side by side on sheath', async () => {
    const spans = ['dashed', 'single', 'wavy'].map(
      (line, index): MarkSpan => ({
        mark: markOf({ line, index }),
        ranges: [{ start: 2 * index, end: 2 * index + 2 }],
      }),
    )
    await expect(pictureOf('sheath', spans)).toMatchFileSnapshot('pictures/neighbours.svg')
  })
})

describe('how sound marks look', () => {
  /** sh, o, x: a team, a letter, and a letter that counts two. */
  const pieces = [
    { letters: 'sh', silent: false, counts: 1 },
    { letters: 'o', silent: false, counts: 1 },
    { letters: 'x', silent: false, counts: 2 },
  ]

  it.each(soundShapes)('a %s for each sound', async shape => {
    const spans = soundSpans({ pieces }, shape).map(span => ({
      ...span,
      mark: { ...span.mark, color: black },
    }))
    await expect(pictureOf('shox', spans)).toMatchFileSnapshot(`pictures/sounds-${shape}.svg`)
  })
})
