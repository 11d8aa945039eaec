import { describe, expect, it } from 'vitest'
import { listSummary, summaryOf } from '../../src/words/summary.js'
import { studied } from './patterns/hand-aligned.js'

const marsh = ['marsh', 'ship', 'fish', 'chef', 'hatch', 'reed', 'sea', 'boat', 'go'].map(studied)

describe('a list’s summary', () => {
  it('counts the words of each pattern, by letters, the commonest letters first', () => {
    const digraphs = summaryOf(marsh).patterns.find(count => count.pattern === 'consonant-digraph')
    expect(digraphs?.words).toEqual(['marsh', 'ship', 'fish', 'chef'])
    expect(digraphs?.byLetters).toEqual([
      { letters: 'sh', words: ['marsh', 'ship', 'fish'] },
      { letters: 'ch', words: ['chef'] },
    ])
  })

  it('counts a word once, however often it shows the pattern', () => {
    const digraphs = summaryOf([studied('church')]).patterns.find(
      count => count.pattern === 'consonant-digraph',
    )
    expect(digraphs?.words).toEqual(['church'])
  })

  it('names the words that share no pattern with another', () => {
    expect(summaryOf(marsh).alone).toEqual(['go'])
  })

  it('says how many words more make two full columns', () => {
    expect(summaryOf(marsh).missing).toContain(
      'sh (consonant-digraph) against ch (consonant-digraph): 2 more with ch (consonant-digraph)',
    )
  })

  it('says nothing of a sort that works already, or of one that is far off', () => {
    const { missing } = summaryOf(['bake', 'cake', 'wave', 'hole', 'phone', 'pothole', 'reed'].map(studied))
    expect(missing.filter(sentence => sentence.includes('_e'))).toEqual([])
  })

  it('reads as a few plain lines', () => {
    expect(listSummary(['reed', 'sea', 'go'].map(studied))).toEqual([
      '3 words hold these patterns:',
      '  long-vowel 1: o (go)',
      '  vowel-team 2: ee (reed), ea (sea)',
      '  hard-g 1: g (go)',
      '  homophone 2: reed (reed), sea (sea)',
      'Shares no pattern with another word: go',
    ])
  })
})
