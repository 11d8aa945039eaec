import { array, assert, constantFrom, oneof, property, string } from 'fast-check'
import { describe, expect, it } from 'vitest'
import { lastWordToShape, wordsToShape } from '../../../src/pieces/typeface/shaped-run.js'

describe('the words of a text, as they are shaped', () => {
  it('each have the space behind them', () => {
    expect(wordsToShape('a tall  grass ')).toEqual(['a ', 'tall  ', 'grass '])
  })

  it('keep an accent, or a sign that stands for one, with the space before it', () => {
    expect(wordsToShape('reed \u0301 e')).toEqual(['reed \u0301 ', 'e'])
    expect(wordsToShape('reed ^ `e')).toEqual(['reed ^ `e'])
  })

  it('are the same for plain signs as the rule for all signs makes them', () => {
    const plain = string({ unit: 'grapheme-ascii', minLength: 1 })
    assert(
      property(plain, text => {
        // One sign that is not plain, at the end, asks for the rule for all.
        const all = wordsToShape(`${text}é`)
        expect(wordsToShape(`${text}e`)).toEqual([...all.slice(0, -1), all.at(-1)!.replace('é', 'e')])
      }),
    )
  })

  it('begin, the last of them, where it is said to', () => {
    const some = oneof(
      string({ unit: 'grapheme-ascii' }),
      string(),
      constantFrom('\u0301', '^', ' ', '´', '\u200b', '·'),
    )
    assert(
      property(array(some, { minLength: 1 }), parts => {
        const text = parts.join(' ')
        expect(text.slice(lastWordToShape(text))).toBe(wordsToShape(text).at(-1))
      }),
    )
  })
})
