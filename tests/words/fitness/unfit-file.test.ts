import { describe, expect, test } from 'vitest'
import { unfitWords, writeUnfitWords } from '../../../src/words/fitness/unfit-file.js'

describe('the file of words kept from children', () => {
  test('has a word a line, in order, none of them too short to say anything', () => {
    expect(writeUnfitWords(new Set(['poison', 'gun', 'ax', 'b-word']))).toBe('gun\npoison\n')
  })

  test('is there once oaktag is built', () => {
    const unfit = unfitWords()
    expect(['gun', 'guns', 'murdered', 'naked'].filter(word => !unfit.has(word))).toEqual([])
    expect(['church', 'marsh', 'heron', 'banana'].filter(word => unfit.has(word))).toEqual([])
  })
})
