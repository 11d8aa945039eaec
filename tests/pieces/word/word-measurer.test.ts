import { describe, expect, it } from 'vitest'
import type { MarkSpan } from '../../../src/pieces/marks/styled-mark.js'
import { measureWord } from '../../../src/pieces/word/word-art.js'
import { wordMeasurer } from '../../../src/pieces/word/word-measurer.js'
import { bundledTypeface } from '../bundled-typefaces.js'

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
  const word = { typeface, word: 'marsh', spans: [], sizeMm: 10 }

  it('has the measure that it had, the same object', () => {
    const measure = wordMeasurer()
    expect(measure(word)).toBe(measure({ ...word }))
    expect(measure(word)).toEqual(measureWord(word))
  })

  it('has it in every colour of its marks', () => {
    const measure = wordMeasurer()
    const inColour = (color: string) =>
      measure({ ...word, spans: [{ ...span, mark: { ...span.mark, color } }] })
    expect(inColour('#225522')).toBe(inColour('#aa2222'))
    expect(inColour('#225522')).toEqual(measureWord({ ...word, spans: [span] }))
    expect(inColour('#225522')).not.toEqual(measure(word))
  })

  it.each([
    ['another word', { word: 'marshes' }],
    ['another size', { sizeMm: 10.1 }],
    ['large print', { large: true }],
    ['another typeface', { typeface: another }],
    ['syllables shown', { word: 'market', syllableBreaks: [3] }],
  ])('is measured anew with %s', (_, change) => {
    const measure = wordMeasurer()
    measure(word)
    expect(measure({ ...word, ...change })).toEqual(measureWord({ ...word, ...change }))
    expect(measure({ ...word, ...change }).widthMm).not.toBe(measure(word).widthMm)
  })
})
