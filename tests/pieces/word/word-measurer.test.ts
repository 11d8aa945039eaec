import { describe, expect, it } from 'vitest'
import { measureWord } from '../../../src/pieces/word/word-art.js'
import { wordMeasurer } from '../../../src/pieces/word/word-measurer.js'
import { bundledTypeface } from '../bundled-typefaces.js'

const [typeface, another] = [bundledTypeface('andika'), bundledTypeface('lexend')]

describe('a word measured again', () => {
  const word = { typeface, word: 'marsh', spans: [], sizeMm: 10 }

  it('has the measure that it had, the same object', () => {
    const measure = wordMeasurer()
    expect(measure(word)).toBe(measure({ ...word }))
    expect(measure(word)).toEqual(measureWord(word))
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
