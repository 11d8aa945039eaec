import { describe, expect, test } from 'vitest'
import { likeItsBase } from '../../../src/words/pronunciation/families.js'

const bases: Readonly<Record<string, string>> = {
  want: 'W AA1 N T',
  report: 'R IY0 P AO1 R T',
  narrow: 'N AE1 R OW0',
  rabbit: 'R AE1 B IH0 T',
  record: 'R EH1 K ER0 D',
  plan: 'P L AE1 N',
  close: 'K L OW1 Z',
  mod: 'M AO1 D',
}

function inFamily(word: string, pronunciation: string) {
  return likeItsBase(word, pronunciation, { firstOf: base => bases[base] })
}

describe('a word with an ending sounds like its base', () => {
  test.each([
    ['wanted', 'W AO1 N T IH0 D', 'W AA1 N T IH0 D'],
    ['reporter', 'R IH0 P AO1 R T ER0', 'R IY0 P AO1 R T ER0'],
    ['narrowed', 'N EH1 R OW0 D', 'N AE1 R OW0 D'],
    ['rabbits', 'R AE1 B AH0 T S', 'R AE1 B IH0 T S'],
  ])('%s: %s becomes %s', (word, listed, agreed) => {
    expect(inFamily(word, listed)).toBe(agreed)
  })

  test.each([
    ['recorded', 'R AH0 K AO1 R D IH0 D', 'another stress'],
    ['planes', 'P L EY1 N Z', 'another vowel'],
    ['closely', 'K L OW1 S L IY0', 'another consonant'],
    ['modest', 'M AA1 D AH0 S T', 'not mod and -est'],
  ])('%s: %s stays, %s', (word, listed) => {
    expect(inFamily(word, listed)).toBe(listed)
  })
})
