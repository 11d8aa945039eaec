import { describe, expect, it } from 'vitest'
import { findWords } from '../../../src/words/find/find-words.js'
import { likenessTo } from '../../../src/words/find/likeness.js'
import { offered } from './offered.js'

const rank = (model: string, word: string) => likenessTo(offered(model))(offered(word))?.rank

describe('what makes a word like another, the nearest first', () => {
  it('is the same vowel spelling in the same frame', () => {
    expect(rank('reed', 'feel')).toBe(0)
    expect(rank('cake', 'name')).toBe(0)
    expect(rank('bridge', 'fridge')).toBe(0)
    expect(rank('shrug', 'shrub')).toBe(0)
  })

  it('is then the same rime, whatever stands before it', () => {
    expect(rank('reed', 'greed')).toBe(1)
    expect(rank('bridge', 'ridge')).toBe(1)
  })

  it('is then the vowel spelling with one end of the frame, with as many sounds, with others', () => {
    expect(rank('reed', 'sheep')).toBe(2)
    expect(rank('bridge', 'trick')).toBe(2)
    expect(rank('reed', 'tree')).toBe(3)
    expect(rank('reed', 'street')).toBe(4)
  })

  it('is last another spelling of the same kind in the same frame', () => {
    expect(rank('reed', 'boat')).toBe(5)
    expect(rank('frog', 'flat')).toBe(5)
  })

  it('is not the same letters with another sound', () => {
    expect(rank('bead', 'head')).not.toBe(0)
  })

  it('is nothing where the kind of vowel differs, or the number of syllables', () => {
    expect(rank('boat', 'frog')).toBeUndefined()
    expect(rank('reed', 'seedling')).toBeUndefined()
  })

  it('is told in plain words', () => {
    expect(likenessTo(offered('reed'))(offered('need'))?.why).toBe(
      'ee in the same frame, and rhymes with reed',
    )
    expect(likenessTo(offered('bridge'))(offered('trick'))?.why).toBe(
      'i, as many sounds, and begins with a beginning blend too',
    )
  })
})

describe('words like a word', () => {
  it('stand by their likeness, then in the order in which they are offered; the word itself is left out', () => {
    const words = ['see', 'boat', 'weed', 'reed', 'keep', 'greed'].map(offered)
    const found = findWords({ like: offered('reed'), count: 9 }, words).map(({ word }) => word.text)
    expect(found).toEqual(['weed', 'keep', 'greed', 'see', 'boat'])
  })

  it('meet the other wishes too', () => {
    const words = ['weed', 'keep', 'greed'].map(offered)
    const found = findWords({ like: offered('reed'), patterns: ['beginning-blend'], count: 9 }, words)
    expect(found.map(({ word }) => word.text)).toEqual(['greed'])
  })
})
