import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { MarkSpan, StyledMark } from '../../../src/pieces/marks/styled-mark.js'
import { lineStyles, outlineStyles } from '../../../src/pieces/marks/styles.js'
import type { PlacedMark } from '../../../src/pieces/piece.js'
import type { WordRequest } from '../../../src/pieces/word/compose-word.js'
import { drawWord, measureWord } from '../../../src/pieces/word/word-art.js'
import { bundledTypeface, bundledTypefaces } from '../bundled-typefaces.js'
import { comeWithin, overlap, renderLayers, spillMm } from '../pixels.js'

const andika = bundledTypeface('andika')

type Looks = Partial<Pick<StyledMark, 'line' | 'outline' | 'tag' | 'color' | 'descenders'>>

/** As the property tests make them up. */
interface ChosenMark {
  readonly looks: Looks
  readonly range: readonly [start: number, length: number, between: number | null]
}

let marksMade = 0
function span(looks: Looks, ...ranges: (readonly [number, number])[]): MarkSpan {
  const target = { kind: 'letters', letters: 'x' } as const
  const mark: StyledMark = {
    mark: { place: { file: 'plan.yaml' }, target },
    index: marksMade++,
    descenders: 'clear',
    assigned: false,
    ...looks,
  }
  return { mark, ranges: ranges.map(([start, end]) => ({ start, end })) as unknown as MarkSpan['ranges'] }
}

const draw = (word: string, spans: readonly MarkSpan[], more: Partial<WordRequest> = {}) =>
  drawWord({ typeface: andika, word, spans, sizeMm: 10, ...more })
const bottom = ({ yMm, heightMm }: PlacedMark): number => yMm + heightMm
const right = ({ xMm, widthMm }: PlacedMark): number => xMm + widthMm

describe('a word as an art', () => {
  it('is as large as its ink, and says the word', () => {
    const { art, letterBox, inkBox } = draw('reed', [])
    expect(inkBox).toEqual({ xMm: 0, yMm: 0, widthMm: art.widthMm, heightMm: art.heightMm })
    expect(letterBox).toEqual(inkBox)
    expect(art.text.map(({ text }) => text)).toEqual(['reed'])
  })

  it('measures as it draws', () => {
    const spans = [span({ outline: 'oval' }, [0, 2]), span({ line: 'wavy', tag: 'e' }, [1, 3])]
    const { art, baselineMm, widenedEm } = draw('reed', spans)
    const measure = measureWord({ typeface: andika, word: 'reed', spans, sizeMm: 10 })
    expect(measure.widthMm).toBeCloseTo(art.widthMm, 9)
    expect(measure.aboveMm).toBeCloseTo(baselineMm, 9)
    expect(measure.belowMm).toBeCloseTo(art.heightMm - baselineMm, 9)
    expect(measure.widenedEm).toBe(widenedEm)
  })

  it('keeps the room of a mark that is not drawn yet, and tells nothing of it', () => {
    const [first, second] = [span({ line: 'single' }, [0, 1]), span({ line: 'wavy' }, [1, 3])]
    const whole = draw('reed', [first, second])
    const part = draw('reed', [first, { ...second, unseen: true }])
    expect(part.inkBox).toEqual(whole.inkBox)
    expect(part.baselineMm).toBe(whole.baselineMm)
    expect(part.marks).toEqual(whole.marks.slice(0, 1))
    expect(part.art.shapes).toHaveLength(whole.art.shapes.length - 1)
  })

  it('has the letters and the marks in the colour asked for, and a mark in its own', () => {
    const { art } = draw(
      'reed',
      [span({ line: 'single' }, [0, 1]), span({ line: 'thick', color: '#00618a' }, [1, 3])],
      {
        color: '#ffffff',
      },
    )
    expect(art.shapes.map(shape => shape.kind === 'path' && shape.fill)).toEqual([
      '#ffffff',
      '#00618a',
      '#ffffff',
    ])
  })

  it('is set wider in large print, with heavier marks', () => {
    const spans = [span({ line: 'single' }, [1, 3])]
    const [normal, large] = [draw('reed', spans), draw('reed', spans, { large: true })]
    expect(large.letterBox.widthMm).toBeGreaterThan(normal.letterBox.widthMm + 1)
    expect(large.marks[0]!.heightMm).toBeGreaterThan(normal.marks[0]!.heightMm)
  })

  it.each(['a', 'i', 'incomprehensibilitiesnessless', "gull's", 'cross-stitch'])(
    'takes the word %s',
    word => {
      const { art } = draw(word, [span({ outline: 'hexagon', line: 'dotted' }, [0, word.length])])
      expect(art.widthMm).toBeGreaterThan(0)
      expect(art.shapes.length).toBeGreaterThan(2)
    },
  )
})

describe('lines', () => {
  it('stand near the letters where nothing reaches down, below the descenders where something does', () => {
    const { baselineMm, marks } = draw('rushing', [
      span({ line: 'single' }, [2, 4]),
      span({ line: 'single' }, [4, 7]),
    ])
    const [sh, ing] = marks
    expect(sh!.yMm - baselineMm).toBeLessThan(1.2)
    expect(ing!.yMm - baselineMm).toBeGreaterThan(andika.metrics.descender * 10)
  })

  it.each(bundledTypefaces)('stand near the letters at the smallest size too, in $family', typeface => {
    for (const word of ['sheen', 'sour', 'moss', 'cove'])
      for (const { name } of lineStyles.filter(style => style.stands === 'under')) {
        const spans = [span({ line: name }, [0, 1]), span({ line: name }, [2, 4])]
        const { baselineMm, marks } = drawWord({ typeface, word, spans, sizeMm: 4.94 })
        for (const mark of marks) expect(mark.yMm - baselineMm).toBeLessThan(0.13 * 4.94)
      }
  })

  it('hang at one depth below descenders, whichever letter reaches down', () => {
    const depth = (word: string, start: number): number => {
      const { baselineMm, marks } = draw(word, [span({ line: 'single' }, [start, start + 1])])
      return marks[0]!.yMm - baselineMm
    }
    expect(Math.abs(depth('pie', 0) - depth('joy', 0))).toBeLessThan(0.35)
  })

  it('break around a descender where the teacher says so', () => {
    const height = (descenders: 'clear' | 'break'): number => {
      const { baselineMm, marks } = draw('night', [span({ line: 'single', descenders }, [1, 4])])
      return marks[0]!.yMm - baselineMm
    }
    expect(height('break')).toBeLessThan(1.2)
    expect(height('clear')).toBeGreaterThan(2)
  })

  it('of nested marks hang one under the other, the shorter nearer', () => {
    const { marks } = draw('shrub', [span({ line: 'single' }, [0, 3]), span({ line: 'wavy' }, [0, 2])])
    const [blend, digraph] = marks
    expect(blend!.yMm).toBeGreaterThanOrEqual(bottom(digraph!) + 0.4)
  })

  it('of overlapping marks hang at different depths', () => {
    const { marks } = draw('crunch', [span({ line: 'single' }, [2, 4]), span({ line: 'double' }, [3, 6])])
    expect(marks[1]!.yMm).toBeGreaterThanOrEqual(bottom(marks[0]!) + 0.4)
  })

  it('of neighbours hang at different levels, in turn', () => {
    const lines = ['dashed', 'single', 'dotted'].map((line, index) =>
      span({ line }, [2 * index, 2 * index + 2]),
    )
    const [sh, ea, th] = draw('sheath', lines).marks
    expect(ea!.yMm).toBeGreaterThan(Math.max(bottom(sh!), bottom(th!)) + 0.9)
    expect(th!.yMm).toBeCloseTo(sh!.yMm, 6)
  })

  it('need no wider letters', () => {
    for (const { name } of lineStyles) expect(draw('sheep', [span({ line: name }, [2, 4])]).widenedEm).toBe(0)
  })
})

describe('outlines', () => {
  it('open the word at their own two edges and nowhere else, and say by how much', () => {
    const [plain, boxed] = [draw('reeds', []), draw('reeds', [span({ outline: 'box' }, [1, 3])])]
    const gaps = (letters: typeof plain.letterInk) =>
      letters.slice(1).map(({ xMm }, index) => xMm - letters[index]!.xMm)
    const added = gaps(boxed.letterInk).map((gap, index) => gap - gaps(plain.letterInk)[index]!)
    expect(added.map(mm => mm > 0.1)).toEqual([true, false, true, false])
    expect(added[1]).toBeCloseTo(0, 9)
    expect(added[3]).toBeCloseTo(0, 9)
    expect(added[0]! + added[2]!).toBeCloseTo(boxed.widenedEm * 10, 6)
  })

  describe.each(bundledTypefaces)('in $family', typeface => {
    const edges = [
      [0, 2],
      [2, 4],
      [7, 9],
      [9, 11],
    ] as const
    const widest = (points: number, large: boolean) =>
      Math.max(
        ...outlineStyles.flatMap(({ name }) => {
          const spans = edges.map(range => span({ outline: name }, range))
          const { openings } = draw('wheelbarrowed', spans, { typeface, sizeMm: (points * 25.4) / 72, large })
          return [...openings.values()]
        }),
      )

    it('open no place by more than nine tenths of an em, however small the word', () => {
      for (const points of [4, 6, 9]) expect(widest(points, true)).toBeLessThanOrEqual(0.9)
      expect(widest(4, true)).toBe(0.9)
    })

    it('need less than that from 14 pt on', () => {
      for (const points of [14, 24, 48]) expect(widest(points, true)).toBeLessThan(0.85)
    })
  })

  it('leave a word as it is where they have room', () => {
    expect(draw('reed', [span({ outline: 'box' }, [0, 4])]).widenedEm).toBe(0)
  })

  it('hold the marks that stand within them', () => {
    const { marks } = draw('shrub', [span({ outline: 'box' }, [0, 3]), span({ outline: 'rounded' }, [0, 2])])
    const [outer, inner] = marks
    expect(outer!.xMm).toBeLessThan(inner!.xMm - 0.4)
    expect(outer!.yMm).toBeLessThan(inner!.yMm - 0.4)
    expect(right(outer!)).toBeGreaterThan(right(inner!) + 0.4)
    expect(bottom(outer!)).toBeGreaterThan(bottom(inner!) + 0.4)
  })
})

describe('split patterns', () => {
  it.each([{ line: 'single' }, { outline: 'rounded' }, { outline: 'heavy' }])(
    'are one mark with one arc: %o',
    looks => {
      const { marks, art } = draw('page', [span(looks, [1, 2], [3, 4])])
      expect(marks).toHaveLength(1)
      expect(marks[0]).toMatchObject({ letters: 'a_e', start: 1, end: 4 })
      expect(art.heightMm).toBeLessThan(14)
    },
  )
})

describe('tags', () => {
  it('stand under their mark, clear of it, and count as ink', () => {
    const spans = [span({ line: 'single' }, [1, 3])]
    const tagged = [span({ line: 'single', tag: 'e' }, [1, 3])]
    expect(draw('reed', tagged).art.heightMm).toBeGreaterThan(draw('reed', spans).art.heightMm + 2)
    expect(draw('reed', tagged).marks[0]!.heightMm).toBe(draw('reed', spans).marks[0]!.heightMm)
  })

  it('are no smaller than the least size of the piece', () => {
    const heightAt = (leastTextMm: number): number =>
      draw('reed', [span({ line: 'single', tag: 'x' }, [1, 3])], { leastTextMm }).art.heightMm
    expect(heightAt(8) - heightAt(5)).toBeCloseTo(3 * andika.metrics.xHeight, 6)
  })
})

describe('syllable breaks', () => {
  it('open the word where a syllable begins and nowhere else', () => {
    const [plain, broken] = [draw('rabbit', []), draw('rabbit', [], { syllableBreaks: [3] })]
    const gaps = (letters: typeof plain.letterInk) =>
      letters.slice(1).map(({ xMm }, index) => xMm - letters[index]!.xMm)
    const opened = gaps(broken.letterInk).map((gap, index) => gap - gaps(plain.letterInk)[index]!)
    expect(opened[2]).toBeGreaterThan(0.5)
    for (const [index, gap] of opened.entries()) if (index !== 2) expect(gap).toBeCloseTo(0, 9)
    expect(broken.widenedEm).toBe(0)
  })

  it('keep their dot off the letters', () => {
    const { art } = draw('rabbit', [], { syllableBreaks: [3] })
    const canvas = { widthMm: art.widthMm + 2, heightMm: art.heightMm + 2, xMm: 1, yMm: 1, dpi: 300 }
    const [dot, letters] = renderLayers([art.shapes.slice(0, 1), art.shapes.slice(1)], canvas)
    expect(comeWithin(dot!, letters!, 3)).toBe(false)
  })
})

describe('any marks on any word, in pixels', () => {
  const words = ['shrimps', 'bridge', 'fluffy', 'jetties', 'harbour', 'typing', 'Wrought', 'quayside']
  const looks = fc.oneof(
    fc.constantFrom(
      ...lineStyles.filter(style => style.stands === 'under').map(({ name }) => ({ line: name })),
    ),
    fc.constantFrom(
      ...outlineStyles.filter(style => style.kind === 'frame').map(({ name }) => ({ outline: name })),
    ),
  )
  /** Where it starts, how many letters, and for a split pattern how many letters lie between its ends. */
  const range = fc.tuple(fc.nat(5), fc.integer({ min: 1, max: 4 }), fc.option(fc.integer({ min: 1, max: 3 })))
  const spanOn = (word: string, { looks: chosen, range: [start, length, between] }: ChosenMark): MarkSpan => {
    const end = Math.min(word.length, start + length)
    if (between === null || end + between + 1 > word.length) return span(chosen, [start, end])
    return span(chosen, [start, end], [end + between, end + between + 1])
  }
  const marked = fc.record({
    word: fc.constantFrom(...words),
    face: fc.constantFrom(...bundledTypefaces.map(({ name }) => name)),
    sizeMm: fc.double({ min: 4.94, max: 20, noNaN: true }),
    large: fc.boolean(),
    marks: fc.array(fc.record({ looks, range }), { minLength: 1, maxLength: 3 }),
  })

  it('no mark covers a letter', () => {
    fc.assert(
      fc.property(marked, ({ word, face, sizeMm, large, marks }) => {
        const typeface = bundledTypeface(face)
        const spans = marks.map(mark => spanOn(word, mark))
        const { art } = drawWord({ typeface, word, sizeMm, large, spans })
        const canvas = { widthMm: art.widthMm + 2, heightMm: art.heightMm + 2, xMm: 1, yMm: 1, dpi: 200 }
        const [ink, letters] = renderLayers([art.shapes.slice(0, -1), art.shapes.slice(-1)], canvas)
        expect(overlap(ink!, letters!)).toBe(0)
      }),
      { seed: 7, numRuns: 150 },
    )
  })

  it('lines of different marks never touch', () => {
    const colours = ['#ff0000', '#00ff00', '#0000ff']
    const lines = marked.filter(({ marks }) => marks.length > 1 && marks.every(mark => 'line' in mark.looks))
    fc.assert(
      fc.property(lines, ({ word, face, sizeMm, large, marks }) => {
        const spans = marks.map((mark, index) =>
          spanOn(word, { ...mark, looks: { ...mark.looks, color: colours[index]! } }),
        )
        const { art } = drawWord({ typeface: bundledTypeface(face), word, sizeMm, large, spans })
        const canvas = { widthMm: art.widthMm + 2, heightMm: art.heightMm + 2, xMm: 1, yMm: 1, dpi: 200 }
        const inColour = (colour: string) =>
          art.shapes.filter(
            shape => shape.kind === 'path' && (shape.fill === colour || shape.stroke?.color === colour),
          )
        const layers = renderLayers(colours.slice(0, spans.length).map(inColour), canvas)
        layers.forEach((layer, index) => {
          for (const other of layers.slice(0, index)) expect(comeWithin(layer, other, 1)).toBe(false)
        })
      }),
      { seed: 7, numRuns: 150 },
    )
  })

  it('is the same drawing every time', () => {
    fc.assert(
      fc.property(marked, ({ word, face, sizeMm, large, marks }) => {
        const typeface = bundledTypeface(face)
        const spans = marks.map(mark => spanOn(word, mark))
        const request = { typeface, word, sizeMm, large, spans }
        expect(drawWord(request)).toEqual(drawWord(request))
      }),
      { seed: 7, numRuns: 25 },
    )
  })
})

describe('all ink of a word', () => {
  it('lies within its art', () => {
    const { art } = draw('bridge', [
      span({ outline: 'oval', tag: 'j' }, [3, 6]),
      span({ line: 'wavy' }, [2, 3], [5, 6]),
    ])
    expect(Math.abs(spillMm(art))).toBeLessThan(0.1)
  })
})
