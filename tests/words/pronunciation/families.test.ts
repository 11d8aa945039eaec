import { describe, expect, test } from 'vitest'
import {
  likeAfterPrefix,
  likeItsBase,
  likeItsHalves,
  withWeakPrefix,
} from '../../../src/words/pronunciation/families.js'

const bases: Readonly<Record<string, string>> = {
  want: 'W AA1 N T',
  report: 'R IY0 P AO1 R T',
  narrow: 'N AE1 R OW0',
  rabbit: 'R AE1 B IH0 T',
  record: 'R EH1 K ER0 D',
  plan: 'P L AE1 N',
  close: 'K L OW1 Z',
  mod: 'M AO1 D',
  scare: 'S K EH1 R',
  crow: 'K R OW1',
  frog: 'F R AA1 G',
  tooth: 'T UW1 TH',
  brush: 'B R AH1 SH',
  son: 'S AH1 N',
  bull: 'B UH1 L',
  wall: 'W AO1 L',
  wallow: 'W AA1 L OW0',
  owed: 'OW1 D',
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
    ['frogs', 'F R AA1 G S', 'F R AA1 G Z'],
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

describe('a compound sounds like its halves', () => {
  const withHalves = (word: string, pronunciation: string) =>
    likeItsHalves(word, pronunciation, { firstOf: other => bases[other] })

  test.each([
    ['scarecrow', 'S K AE1 R K R OW2', 'S K EH1 R K R OW2'],
    ['bullfrog', 'B UH1 L F R AO2 G', 'B UH1 L F R AA2 G'],
  ])('%s: %s becomes %s, with its own stress', (word, listed, agreed) => {
    expect(withHalves(word, listed)).toBe(agreed)
  })

  test('a half keeps its short u, and a half with another letter may lose its vowel', () => {
    expect(withHalves('toothbrush', 'T UW1 TH B R AH0 SH')).toBe('T UW1 TH B R AH2 SH')
    expect(withHalves('toothson', 'T UW1 TH S AH0 N')).toBe('T UW1 TH S AH0 N')
  })

  test('wallowed: its base is wallow, not wall', () => {
    expect(withHalves('wallowed', 'W AA1 L OW0 D')).toBe('W AA1 L OW0 D')
  })
})

describe('prefixes', () => {
  const known: Readonly<Record<string, string>> = {
    write: 'R AY1 T',
    mind: 'M AY1 N D',
    port: 'P AO1 R T',
    expected: 'IH0 K S P EH1 K T IH0 D',
  }
  const family = { firstOf: (word: string) => known[word] }

  test.each([
    ['report', 'R IY0 P AO1 R T', 'R IH0 P AO1 R T', 'as return: a listed look-alike'],
    ['remind', 'R IY0 M AY1 N D', 'R IH0 M AY1 N D', 'weak before mind, which is listed'],
    ['require', 'R IY0 K W AY1 R', 'R IH0 K W AY1 R', 'no word follows'],
    ['require', 'R IY2 K W AY1 R', 'R IH0 K W AY1 R', 'a stress right before another is none'],
    ['recollect', 'R IY2 K AH0 L EH1 K T', 'R IY2 K AH0 L EH1 K T', 'a stress of its own'],
    ['rewrite', 'R IY0 R AY1 T', 'R IY0 R AY1 T', 'a living prefix'],
  ])('%s: %s becomes %s, %s', (word, listed, expected) => {
    expect(withWeakPrefix(word, listed, family)).toBe(expected)
  })

  test('a word after a prefix sounds as it does alone', () => {
    expect(likeAfterPrefix('unexpected', 'AH2 N AH0 K S P EH1 K T IH0 D', family)).toBe(
      'AH2 N IH0 K S P EH1 K T IH0 D',
    )
  })
})
