import { describe, expect, test } from 'vitest'
import { gatherHomophones } from '../../../src/words/homophones/gather-homophones.js'
import type { LexiconEntry } from '../../../src/words/lexicon/entry.js'

function entry(word: string, pronunciation: string, differing: Partial<LexiconEntry> = {}): LexiconEntry {
  return {
    word,
    pronunciations: [pronunciation],
    familiarity: 100,
    partsOfSpeech: ['noun'],
    unfit: false,
    notReadAloud: false,
    name: false,
    heteronym: false,
    ...differing,
  }
}

function groupsOf(...entries: readonly LexiconEntry[]): readonly string[] {
  return gatherHomophones({
    entries,
    isOneWord: (first, second) => first === 'gray' && second === 'grey',
    leftOut: new Set(['lien']),
    calledOut: new Set(['hey']),
  }).map(({ words, where }) => `${words.join(' ')}: ${where}`)
}

const lean = entry('lean', 'L IY1 N')

test('words with the same sounds are a group', () => {
  expect(groupsOf(entry('sea', 'S IY1'), entry('see', 'S IY1'), lean)).toEqual(['sea see: every accent'])
})

describe('left out are', () => {
  test.each([
    ['rare words', entry('lene', 'L IY1 N', { familiarity: 14 })],
    ['names', entry('lene', 'L IY1 N', { name: true })],
    ['words that are not offered to children', entry('lene', 'L IY1 N', { unfit: true })],
    ['words that are not read aloud', entry('lene', 'L IY1 N', { notReadAloud: true })],
    ['words without a part of speech', entry('lene', 'L IY1 N', { partsOfSpeech: [] })],
    ['words that are only called out', entry('lene', 'L IY1 N', { partsOfSpeech: ['interjection'] })],
    ['letters that stand for a word', entry('ln', 'L IY1 N')],
    ['words left out by hand', entry('lien', 'L IY1 N')],
  ])('%s', (_, other) => expect(groupsOf(lean, other)).toEqual([]))

  test('second spellings of one word', () => {
    expect(groupsOf(entry('gray', 'G R EY1'), entry('grey', 'G R EY1'))).toEqual([])
  })
})

test('a word that is called out and stands in books is kept', () => {
  const hey = entry('hey', 'HH EY1', { partsOfSpeech: ['interjection'] })
  expect(groupsOf(hey, entry('hay', 'HH EY1'))).toEqual(['hey hay: every accent'])
})

test('a heteronym is in the group of each of its ways, unless their stress differs', () => {
  const read = entry('read', 'R IY1 D', { pronunciations: ['R IY1 D', 'R EH1 D'], heteronym: true })
  expect(groupsOf(read, entry('reed', 'R IY1 D'), entry('red', 'R EH1 D'))).toEqual([
    'read reed: every accent',
    'read red: every accent',
  ])
  const ways = ['D EH1 Z ER0 T', 'D IH0 Z ER1 T']
  const desert = entry('desert', ways[0]!, { pronunciations: ways, heteronym: true })
  expect(groupsOf(desert, entry('dessert', ways[1]!))).toEqual([])
})

test('wh said as w is told', () => {
  expect(groupsOf(entry('which', 'W IH1 CH'), entry('witch', 'W IH1 CH'))).toEqual([
    'which witch: wh said as w',
  ])
})

test('very and vary are told to be alike where merry is said as marry', () => {
  expect(groupsOf(entry('very', 'V EH1 R IY0'), entry('vary', 'V EH1 R IY0'))).toEqual([
    'very vary: merry said as marry',
  ])
  expect(groupsOf(entry('bury', 'B EH1 R IY0'), entry('berry', 'B EH1 R IY0'))).toEqual([
    'bury berry: every accent',
  ])
})

test('cot and caught are a group where they are merged', () => {
  expect(groupsOf(entry('cot', 'K AA1 T'), entry('caught', 'K AO1 T'))).toEqual([
    'cot caught: cot and caught merged',
  ])
})

describe('where r is dropped', () => {
  test('fort is fought and spar is spa', () => {
    expect(groupsOf(entry('fort', 'F AO1 R T'), entry('fought', 'F AO1 T'))).toEqual([
      'fort fought: r dropped',
    ])
    expect(groupsOf(entry('spar', 'S P AA1 R'), entry('spa', 'S P AA1'))).toEqual(['spar spa: r dropped'])
  })

  test.each([
    ['cart and cot: the o is short', entry('cart', 'K AA1 R T'), entry('cot', 'K AA1 T')],
    [
      'shared and shed: the vowel of shared is long',
      entry('shared', 'SH EH1 R D'),
      entry('shed', 'SH EH1 D'),
    ],
    ['tired and tied: tired keeps a glide', entry('tired', 'T AY1 R D'), entry('tied', 'T AY1 D')],
  ])('not %s', (_, first, second) => expect(groupsOf(first, second)).toEqual([]))
})
