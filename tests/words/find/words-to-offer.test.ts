import { describe, expect, it } from 'vitest'
import { wordsToOffer } from '../../../src/words/find/words-to-offer.js'
import type { LexiconEntry } from '../../../src/words/lexicon/entry.js'

const plain: LexiconEntry = {
  word: 'pond',
  pronunciations: ['P AA1 N D'],
  familiarity: 300,
  partsOfSpeech: ['noun'],
  unfit: false,
  notReadAloud: false,
  name: false,
  heteronym: false,
}

const offered = (...entries: readonly Partial<LexiconEntry>[]) => [
  ...wordsToOffer({ entries: () => entries.map(entry => ({ ...plain, ...entry }))[Symbol.iterator]() }),
]

describe('words to offer', () => {
  it('leave out what is unfit, not read aloud, a name, a fragment, a single letter or without vowel letters', () => {
    expect(
      offered(
        {},
        { word: 'beer', unfit: true },
        { word: 'heck', notReadAloud: true },
        { word: 'reeds', name: true },
        { word: 'aren', partsOfSpeech: [] },
        { word: 's' },
        { word: 'hmm' },
        { word: 'nah', partsOfSpeech: ['interjection'] },
        { word: 'reed' },
      ),
    ).toEqual(['pond', 'reed'])
  })

  it('stop where words become unfamiliar', () => {
    expect(offered({}, { word: 'sedge', familiarity: 2 }, { word: 'reed' })).toEqual(['pond'])
  })
})
