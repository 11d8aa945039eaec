import { describe, expect, it } from 'vitest'
import { type FindQuery, findWords, wordsToOffer } from '../../src/words/find.js'
import type { LexiconEntry } from '../../src/words/lexicon/entry.js'
import { likenessTo } from '../../src/words/likeness.js'
import { handAligned, studied } from './patterns/hand-aligned.js'

const supply = { words: [...handAligned.keys()].filter(word => /^[a-z]+$/.test(word)), study: studied }

function found(query: Omit<FindQuery, 'count'>, count = 100): readonly string[] {
  return findWords({ ...query, count }, supply).map(({ word }) => word.text)
}

describe('words by pattern', () => {
  it('finds every word that shows it, in the order of the supply', () => {
    expect(found({ patterns: ['digraph-blend'] })).toEqual([
      'shrimp',
      'thread',
      'lunch',
      'month',
      'twelfth',
      'strength',
    ])
  })

  it('keeps to the place', () => {
    expect(found({ patterns: ['digraph-blend'], place: 'beginning' })).toEqual(['shrimp', 'thread'])
    expect(found({ patterns: ['consonant-digraph'], place: 'middle', letters: 'sh' })).toEqual([
      'courtship',
      'fishing',
      'marshes',
    ])
  })

  it('takes the letters of the pattern, split ones too', () => {
    expect(found({ patterns: ['silent-e'], letters: 'o_e' })).toEqual(['pothole', 'hole', 'phone'])
  })

  it('wants all patterns that are named', () => {
    expect(found({ patterns: ['beginning-blend', 'vowel-team'] })).toEqual(['snow', 'bread', 'laundry'])
  })

  it('finds kinds of syllable, which are no part of a word’s own findings', () => {
    expect(found({ patterns: ['open-syllable'], syllables: 1 })).toEqual(['ski', 'go', 'who'])
  })

  it('offers contractions, which no count of single words holds', () => {
    const study = (text: string) => (text === "can't" ? studied(text) : undefined)
    const [first] = findWords({ patterns: ['contraction'], count: 5 }, { words: [], study })
    expect(first?.word.text).toBe("can't")
  })

  it('says which rule fired', () => {
    const [first] = findWords({ patterns: ['soft-c'], count: 1 }, supply)
    expect(first?.word.text).toBe('success')
    expect(first?.why).toBe('c spells /S/ as in sun before e')
  })
})

describe('words by letters and numbers', () => {
  it('takes letters as they are spelled, at the place asked for', () => {
    expect(found({ letters: 'th' })).toContain('pothole')
    expect(found({ letters: 'th', place: 'beginning' })).toEqual(['thread', 'think'])
    expect(found({ letters: 'th', place: 'end' })).toEqual(['month', 'twelfth', 'strength'])
    expect(found({ letters: 'th', place: 'middle' })).toEqual(['pothole'])
  })

  it('counts sounds and syllables', () => {
    expect(found({ sounds: 2 })).toEqual(['car', 'sea', 'go', 'who', 'hour', 'care', 'fire', 'here'])
    expect(found({ syllables: 3 })).toEqual(['recipe', 'mosquito', 'remember'])
  })

  it('stops at the count', () => {
    expect(found({ syllables: 1 }, 4)).toEqual(['marsh', 'pot', 'hole', 'hatch'])
  })
})

describe('words like a word', () => {
  it('loses none by the quick look at spelling and sounds before a word is studied', () => {
    const pronunciationOf = (word: string) => studied(word).pronunciations[0]
    for (const text of supply.words) {
      const query = { like: studied(text), count: 200 }
      expect(findWords(query, { ...supply, pronunciationOf })).toEqual(findWords(query, supply))
    }
  })

  it('puts the same patterns with the same rime first', () => {
    expect(likenessTo(studied('cake'))(studied('bake'))?.rank).toBe(0)
    expect(found({ like: studied('cake') })[0]).toBe('bake')
  })

  it('then the same patterns on the same letters, then the rime alone, then other letters', () => {
    expect(likenessTo(studied('cake'))(studied('wave'))?.rank).toBe(1)
    expect(likenessTo(studied('thread'))(studied('bread'))?.rank).toBe(2)
    expect(likenessTo(studied('cake'))(studied('hole'))?.rank).toBe(3)
    expect(likenessTo(studied('reed'))(studied('sea'))?.rank).toBe(4)
    expect(likenessTo(studied('boat'))(studied('snow'))).toBeUndefined()
    expect(likenessTo(studied('frog'))(studied('sled'))?.rank).toBe(3)
  })

  it('never the word itself, and none with another number of syllables', () => {
    const like = findWords({ like: studied('rabbit'), count: 50 }, supply)
    expect(like.map(({ word }) => word.text)).not.toContain('rabbit')
    expect(like.every(({ word }) => word.syllables.length === 2)).toBe(true)
  })
})

describe('words to offer', () => {
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

  it('leaves out what is unfit, not read aloud, a name, a fragment, a single letter or without vowel letters', () => {
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

  it('stops where words become unfamiliar', () => {
    expect(offered({}, { word: 'sedge', familiarity: 2 }, { word: 'reed' })).toEqual(['pond'])
  })
})
