import { describe, expect, it } from 'vitest'
import { type FindQuery, findWords } from '../../../src/words/find/find-words.js'
import { levelOf } from '../../../src/words/find/levels.js'
import { offered, offeredByHand } from './offered.js'

function found(query: Omit<FindQuery, 'count'>, count = 100): readonly string[] {
  return findWords({ ...query, count }, offeredByHand).map(({ word }) => word.text)
}

describe('words by pattern', () => {
  it('are all that show it, in the order in which they are offered', () => {
    const blends = ['shrug', 'thread', 'bench', 'month', 'twelfth', 'strength']
    expect(found({ patterns: ['digraph-blend'] })).toEqual(blends)
  })

  it('keep to the place', () => {
    expect(found({ patterns: ['digraph-blend'], place: 'beginning' })).toEqual(['shrug', 'thread'])
    expect(found({ patterns: ['consonant-digraph'], place: 'middle', letters: 'sh' })).toEqual([
      'courtship',
      'fishing',
      'marshes',
    ])
  })

  it('have the pattern on the letters that are named, split ones too', () => {
    expect(found({ patterns: ['silent-e'], letters: 'o_e' })).toEqual(['pothole', 'hole', 'phone'])
  })

  it('show all patterns that are named', () => {
    expect(found({ patterns: ['beginning-blend', 'vowel-team'] })).toEqual(['snow', 'bread', 'laundry'])
  })

  it('show kinds of syllable too', () => {
    expect(found({ patterns: ['open-syllable'], syllables: 1 })).toEqual(['ski', 'go', 'who'])
  })

  it('are contractions only where contractions are asked for', () => {
    expect(found({ patterns: ['contraction'] })).toContain("can't")
    expect(found({ letters: 'n' })).not.toContain("can't")
  })
})

describe('words by letters', () => {
  it('have them as they are spelled, at the place asked for', () => {
    expect(found({ letters: 'th' })).toContain('pothole')
    expect(found({ letters: 'th', place: 'beginning' })).toEqual(['thread', 'think'])
    expect(found({ letters: 'th', place: 'end' })).toEqual(['month', 'twelfth', 'strength'])
    expect(found({ letters: 'th', place: 'middle' })).toEqual(['pothole'])
  })

  it('have one letter or team in place of a low line, and what stands round it works together', () => {
    const split = (letters: string, ...words: readonly string[]) =>
      findWords({ letters, count: 20 }, words.map(offered)).map(({ word }) => word.text)
    expect(split('a_e', 'cake', 'bathe', 'water', 'have', 'paste', 'idea', 'planet')).toEqual([
      'cake',
      'bathe',
    ])
    expect(split('i_e', 'time', 'river', 'ice', 'fire')).toEqual(['time', 'ice', 'fire'])
    expect(split('o_o', 'photo', 'zoo')).toEqual(['photo'])
  })

  it('keep to the place with a low line too', () => {
    const split = (place: 'beginning' | 'middle' | 'end') =>
      findWords({ letters: 'a_e', place, count: 9 }, ['ape', 'cake', 'cakes'].map(offered)).map(
        ({ word }) => word.text,
      )
    expect(split('beginning')).toEqual(['ape'])
    expect(split('end')).toEqual(['ape', 'cake'])
    expect(split('middle')).toEqual(['cakes'])
  })
})

describe('words by numbers', () => {
  it('have so many sounds and syllables', () => {
    expect(found({ sounds: 2 })).toEqual(['car', 'sea', 'go', 'who', 'hour', 'care', 'fire', 'here'])
    expect(found({ syllables: 3 })).toEqual(['recipe', 'mosquito', 'remember'])
  })

  it('are no more than were asked for', () => {
    expect(found({ syllables: 1 }, 4)).toEqual(['marsh', 'pot', 'hole', 'hatch'])
  })

  it('are easy, middle or hard by their syllables and by how familiar they are', () => {
    const level = (text: string) => levelOf(offered(text))
    expect(['fish', 'rain'].map(level)).toEqual(['easy', 'easy'])
    expect(['marsh', 'window', 'rabbit'].map(level)).toEqual(['hard', 'middle', 'middle'])
    expect(['mosquito', 'gnat'].map(level)).toEqual(['hard', 'hard'])
    expect(found({ level: 'middle', patterns: ['silent-e'] }).length).toBeGreaterThan(0)
  })
})
