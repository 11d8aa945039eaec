import { describe, expect, it } from 'vitest'
import { loadTypeface } from '../../../fonts/load-typeface.js'
import { type Looks, styleOrder } from '../../../src/pieces/marks/assign-styles.js'
import type { StyledMark } from '../../../src/pieces/marks/styled-mark.js'
import { lineNames, outlineNames } from '../../../src/pieces/marks/styles.js'
import type { Art } from '../../../src/pieces/piece.js'
import { leastEmMm } from '../../../src/pieces/text/type-size.js'
import { drawWord } from '../../../src/pieces/word/word-art.js'
import { type Coverage, render } from '../pixels.js'

const place = { file: 'plan.yaml' }
const loaded = loadTypeface({ name: 'andika', place })
if (!loaded.ok) throw new Error('Andika does not load')
const typeface = loaded.value
const sizeMm = leastEmMm(typeface, { kind: 'normal' })

function unmarked(): Art {
  return drawWord({ typeface, word: 'reed', spans: [], sizeMm }).art
}

/** Its letters' left end and baseline always in the same place. */
function canvas({ text }: Art) {
  return { widthMm: 16, heightMm: 12, xMm: 2 - text[0]!.xMm, yMm: 7 - text[0]!.baselineMm, dpi: 300 }
}

/** The word in one style, in black at 300 DPI. */
function printed(looks: { readonly line?: string; readonly outline?: string }): Coverage {
  const target = { kind: 'letters', letters: 'ree' } as const
  const mark: StyledMark = {
    mark: { place, target },
    index: 0,
    descenders: 'clear',
    assigned: false,
    ...looks,
  }
  const { art } = drawWord({
    typeface,
    word: 'reed',
    spans: [{ mark, ranges: [{ start: 0, end: 3 }] }],
    sizeMm,
  })
  return render(art.shapes, canvas(art))
}

/** As a copier leaves it: a pixel is black or white, half-covered is where it turns. */
function oneBit({ values }: Coverage): readonly boolean[] {
  return [...values].map(value => value >= 128)
}

/**
 * How many pixels are black in one picture and not black, nor next to black, in the other: a shift of one pixel is no
 * difference.
 */
function difference(a: Coverage, b: Coverage): number {
  const [first, second] = [oneBit(a), oneBit(b)]
  const near = (bits: readonly boolean[], index: number): boolean =>
    [-1, 0, 1].some(dy => [-1, 0, 1].some(dx => bits[index + dy * a.width + dx] === true))
  let apart = 0
  first.forEach((bit, index) => {
    if ((bit && !near(second, index)) || (second[index] === true && !near(first, index))) apart++
  })
  return apart
}

const styles = [
  ...lineNames.map(line => ({ name: line, looks: { line } })),
  ...outlineNames.map(outline => ({ name: outline, looks: { outline } })),
]

describe('all styles in black at 300 DPI, turned to one bit at half, at the smallest size', () => {
  const pictures = styles.map(({ name, looks }) => ({ name, picture: printed(looks) }))
  const pairs = pictures.flatMap((one, index) => pictures.slice(0, index).map(other => ({ one, other })))

  it('every pair of styles differs in at least 80 pixels, a fifth of the ink of one line', () => {
    const alike = pairs
      .map(({ one, other }) => ({
        pair: `${other.name} and ${one.name}`,
        pixels: difference(one.picture, other.picture),
      }))
      .filter(({ pixels }) => pixels < 80)
    expect(alike).toEqual([])
  })

  /** Of each style, how far it is from the nearest of those before it in the order in which marks take styles. */
  const apart = (name: string, from: readonly string[]): number =>
    Math.min(...from.map(other => difference(pictureOf(name), pictureOf(other))))
  const pictureOf = (name: string): Coverage => pictures.find(picture => picture.name === name)!.picture
  const named = (kind: keyof Looks): readonly string[] =>
    styleOrder.flatMap(looks => (Object.keys(looks).length === 1 && looks[kind] ? [looks[kind]] : []))
  /** Why these wait stands at `styleOrder`. */
  const lines = named('line').filter(name => name !== 'bracket' && name !== 'single')

  it.each([
    ['line', lines],
    ['outline', named('outline')],
  ])('each %s that marks take differs more from those before it than any that comes after it', (_, order) => {
    for (const [index, name] of order.entries()) {
      if (index === 0) continue
      const before = order.slice(0, index)
      for (const later of order.slice(index + 1))
        expect([name, apart(name, before) >= apart(later, before)]).toEqual([name, true])
    }
  })

  it('the first two differ more than any other line and outline that marks take', () => {
    const [line, outline] = [lines[0]!, named('outline')[0]!]
    const most = Math.max(
      ...lines.flatMap(one => named('outline').map(other => difference(pictureOf(one), pictureOf(other)))),
    )
    expect(difference(pictureOf(line), pictureOf(outline))).toBe(most)
  })

  it('one line under these letters is about 400 pixels', () => {
    const plain = render(unmarked().shapes, canvas(unmarked()))
    expect(difference(plain, pictures.find(({ name }) => name === 'single')!.picture)).toBeGreaterThan(300)
  })
})
