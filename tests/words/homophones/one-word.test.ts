import { expect, test } from 'vitest'
import { oneWordTest } from '../../../src/words/homophones/one-word.js'
import { readSenses } from '../../../src/words/parts-of-speech/wordnet.js'

const isOneWord = oneWordTest(readSenses())

test.each([
  ['gray', 'grey', 'two spellings in one synset'],
  ['flyers', 'fliers', 'forms of two spellings'],
  ['worshiped', 'worshipped', 'two spellings of a form'],
  ['gentleman', 'gentlemen', 'one and many'],
])('%s and %s are one word: %s', (first, second) => expect(isOneWord(first, second)).toBe(true))

test.each([
  ['sea', 'see'],
  ['draw', 'drawer'],
  ['tide', 'tied'],
])('%s and %s are two', (first, second) => expect(isOneWord(first, second)).toBe(false))
