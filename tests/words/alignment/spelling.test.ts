import { describe, expect, test } from 'vitest'
import { foldLetter, spell } from '../../../src/words/alignment/spelling.js'

describe("a word's letters for the table", () => {
  test('signs are left out and close the grapheme before them', () => {
    const { letters, breaks } = spell("o'clock")
    expect(letters).toBe('oclock')
    expect([...breaks]).toEqual([1])
  })

  test('an apostrophe goes with the letter after it, a hyphen with the letter before it', () => {
    const apostrophe = spell("we'll")
    expect([apostrophe.begins[2], apostrophe.ends[2]]).toEqual([2, 4])
    const hyphen = spell('re-do')
    expect([hyphen.begins[1], hyphen.ends[1]]).toEqual([1, 3])
  })

  test('an apostrophe at the end goes with the last letter', () => {
    expect(spell("herons'").ends.at(-1)).toBe(7)
  })

  test.each([
    ['É', 'e'],
    ['ñ', 'n'],
    ['æ', 'ae'],
    ['ß', 'ss'],
  ])('%s counts as %s', (letter, folded) => {
    expect(foldLetter(letter)).toBe(folded)
  })
})
