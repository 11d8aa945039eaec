import { describe, expect, test } from 'vitest'
import { keyOf, keyWhereMerged, keyWithoutR } from '../../../src/words/homophones/said-alike.js'

describe('said alike', () => {
  test.each([
    ['tear and tier', 'T IH1 R', 'T IY1 R'],
    ['flower and flour', 'F L AW1 ER0', 'F L AW1 R'],
    ['profit and prophet', 'P R AA1 F IH0 T', 'P R AA1 F AH0 T'],
  ])('%s', (_, first, second) => expect(keyOf(first)).toBe(keyOf(second)))
})

describe('not said alike', () => {
  test.each([
    ['the desert and dessert', 'D EH1 Z ER0 T', 'D IH0 Z ER1 T'],
    ['affect and effect, whose weak vowel opens the word', 'AH0 F EH1 K T', 'IH0 F EH1 K T'],
    ['racing and a word in -ung', 'R EY1 S IH0 NG', 'R EY1 S AH0 NG'],
  ])('%s', (_, first, second) => expect(keyOf(first)).not.toBe(keyOf(second)))
})

test('without r before a consonant or at the end, fort is fought; soaring keeps its r, and raw', () => {
  expect(keyWithoutR('F AO1 R T')).toBe(keyWithoutR('F AO1 T'))
  expect(keyWithoutR('S AO1 R IH0 NG')).toContain(' R ')
  expect(keyWithoutR('R AO1')).toBe('R AO1')
})

test('where cot and caught are merged, a vowel before r stays', () => {
  expect(keyWhereMerged('K AO1 T')).toBe('K AA1 T')
  expect(keyWhereMerged('K AO1 R D')).toBe('K AO1 R D')
})
