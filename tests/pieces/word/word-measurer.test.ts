import { describe, expect, it } from 'vitest'
import type { MarkSpan } from '../../../src/pieces/marks/styled-mark.js'
import { lineNames, outlineNames } from '../../../src/pieces/marks/styles.js'
import { drawWord, measureWord } from '../../../src/pieces/word/word-art.js'
import { wordMeasurer } from '../../../src/pieces/word/word-measurer.js'
import { bundledTypeface } from '../bundled-typefaces.js'
import { awkwardSpans } from '../marks/awkward-spans.js'

const [typeface, another] = [bundledTypeface('andika'), bundledTypeface('lexend')]

/** A line under the letters of "sh". */
const span: MarkSpan = {
  mark: {
    mark: { place: { file: 'plan.yaml' }, target: { kind: 'letters', letters: 'sh' } },
    index: 0,
    line: 'single',
    descenders: 'clear',
    assigned: false,
  },
  ranges: [{ start: 3, end: 5 }],
}

describe('a word measured again', () => {
  const sizeMm = 10
  const word = { typeface, word: 'marsh', spans: [] }

  it('has the measure that it had, the same object', () => {
    const measure = wordMeasurer()
    expect(measure(word).at(sizeMm)).toBe(measure({ ...word }).at(sizeMm))
    expect(measure(word).at(sizeMm)).toEqual(measureWord({ ...word, sizeMm }))
  })

  it('is not told as measured', () => {
    let told = 0
    const measure = wordMeasurer(undefined, () => {
      told += 1
    })
    for (const size of [10, 10, 12, 10]) measure({ ...word }).at(size)
    expect(told).toBe(2)
  })

  it('has it in every colour of its marks', () => {
    const measure = wordMeasurer()
    const inColour = (color: string) =>
      measure({ ...word, spans: [{ ...span, mark: { ...span.mark, color } }] }).at(sizeMm)
    expect(inColour('#225522')).toBe(inColour('#aa2222'))
    expect(inColour('#225522')).toEqual(measureWord({ ...word, spans: [span], sizeMm }))
    expect(inColour('#225522')).not.toEqual(measure(word).at(sizeMm))
  })

  it.each([
    ['another word', { word: 'marshes' }],
    ['large print', { large: true }],
    ['another typeface', { typeface: another }],
    ['syllables shown', { word: 'market', syllableBreaks: [3] }],
  ])('is measured anew with %s', (_, change) => {
    const measure = wordMeasurer()
    measure(word).at(sizeMm)
    const changed = measure({ ...word, ...change }).at(sizeMm)
    expect(changed).toEqual(measureWord({ ...word, ...change, sizeMm }))
    expect(changed.widthMm).not.toBe(measure(word).at(sizeMm).widthMm)
  })

  it('is measured anew in another size', () => {
    const { at } = wordMeasurer()(word)
    at(sizeMm)
    expect(at(10.1)).toEqual(measureWord({ ...word, sizeMm: 10.1 }))
    expect(at(10.1).widthMm).not.toBe(at(sizeMm).widthMm)
  })
})

describe('a word without marks', () => {
  it.each(['marsh', 'Wren', 'puffin', "gull's", 'café', 'jetty', '__'])(
    '%s is as large as it is drawn',
    text => {
      for (const sizeMm of [3.7, 11.3, 30])
        for (const large of [false, true]) {
          const word = { typeface, word: text, spans: [], large }
          const { art, baselineMm } = drawWord({ ...word, sizeMm })
          const { widthMm, aboveMm, belowMm } = wordMeasurer()(word).at(sizeMm)
          expect([widthMm, aboveMm]).toEqual([art.widthMm, Math.max(0, baselineMm)])
          expect(belowMm).toBeCloseTo(Math.max(0, art.heightMm - baselineMm), 9)
        }
    },
  )
})

describe('the size of the letters alone', () => {
  const styles = [
    ...lineNames.map(line => ({ line })),
    ...outlineNames.map(outline => ({ outline })),
    { line: lineNames[0]!, outline: outlineNames[0]! },
  ]

  it.each([typeface, another].map(each => [each.name, each] as const))(
    'is never more than that of the word with its marks, in %s',
    (_, face) => {
      const measure = wordMeasurer()
      const larger = awkwardSpans.flatMap(({ written, word, ranges: [first, second] }) =>
        styles.flatMap(style =>
          [false, true].flatMap(large => {
            const { line: _, ...mark } = span.mark
            const spans: readonly MarkSpan[] = [
              { mark: { ...mark, ...style }, ranges: second === undefined ? [first!] : [first!, second] },
            ]
            const { at, letters } = measure({ typeface: face, word, spans, large })
            const [whole, { width, above, below }] = [at(8), letters()]
            const isLarger =
              width * 8 > whole.widthMm + 1e-9 || above * 8 > whole.aboveMm || below * 8 > whole.belowMm
            return isLarger ? [{ written, style, large }] : []
          }),
        ),
      )
      expect(larger).toEqual([])
    },
  )
})
