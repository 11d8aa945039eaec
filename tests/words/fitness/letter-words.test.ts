import { expect, test } from 'vitest'
import { isSaidByLetters } from '../../../src/words/fitness/letter-words.js'

test.each([
  ['atm', 'EY1 T IY2 EH1 M'],
  ['ok', 'OW2 K EY1'],
  ['cc', 'S IY1 S IY1'],
])('%s is said by its letters', (word, pronunciation) =>
  expect(isSaidByLetters(word, pronunciation)).toBe(true),
)

test.each([
  ['be', 'B IY1'],
  ['any', 'EH1 N IY0'],
  ['cod', 'K AA1 D'],
  ['baa', 'B AA1'],
])('%s is not', (word, pronunciation) => expect(isSaidByLetters(word, pronunciation)).toBe(false))
