import { describe, expect, it } from 'vitest'
import { cluePractice } from '../../../src/sets/practice/clues.js'
import { kindsPractice } from '../../../src/sets/practice/kinds-of-words.js'
import { soundPractice } from '../../../src/sets/practice/sounds.js'
import { studied } from './word-of-lexicon.js'

describe('practice of parts of speech', () => {
  it('has a box for what each word most often is, and puts a word into every box that it fits', () => {
    const { boxes, items } = kindsPractice(['reed', 'hop', 'stream', 'big'].map(studied))
    expect(boxes).toEqual(['noun', 'verb', 'adjective'])
    expect(items.map(({ prompt, answer }) => `${prompt}: ${answer}`)).toEqual([
      'reed: noun',
      'hop: verb, noun',
      'stream: noun, verb',
      'big: adjective',
    ])
  })

  it('takes what words can be where all of them most often are one', () => {
    expect(kindsPractice(['reed', 'stream'].map(studied)).boxes).toEqual(['noun', 'verb'])
  })

  it('asks nothing where there is one box', () => {
    expect(kindsPractice(['reed', 'marsh'].map(studied)).items).toEqual([])
  })

  it('leaves out a word whose part of speech is a guess', () => {
    expect(kindsPractice(['reed', 'hop', 'zorpish'].map(studied)).leftOut).toEqual([
      { word: 'zorpish', why: 'what we know of it is a guess' },
    ])
  })
})

describe('practice of clues', () => {
  const word = (text: string, more: object) => ({ ...studied(text), ...more })

  it('asks with the clue, or with the sentence and a gap where there is none', () => {
    const { items } = cluePractice([
      word('reed', { clue: 'a tall grass' }),
      word('snail', { sentence: 'A snail sat on the snails’ leaf.' }),
    ])
    expect(items.map(({ prompt, answer }) => [prompt, answer])).toEqual([
      ['a tall grass', 'reed'],
      ['A ____ sat on the snails’ leaf.', 'snail'],
    ])
  })

  it('does not tell the word in its own clue', () => {
    expect(cluePractice([word('reed', { clue: 'Reed beds stand in water' })]).items[0]!.prompt).toBe(
      '____ beds stand in water',
    )
  })

  it('leaves out words without a clue, and those that share one', () => {
    const clue = 'a bird'
    expect(cluePractice([word('gull', { clue }), word('wren', { clue }), studied('moth')]).leftOut).toEqual([
      { word: 'gull', why: 'its clue is that of another word too' },
      { word: 'wren', why: 'its clue is that of another word too' },
      { word: 'moth', why: 'no clue' },
    ])
  })
})

describe('practice of sounds', () => {
  it('answers with the letters of each sound as study shows them', () => {
    const { items } = soundPractice(['shrub', 'snake', 'box'].map(studied))
    expect(items.map(({ answer }) => answer)).toEqual(['sh·r·u·b', 's·n·a·k·(e)', 'b·o·x, x counts two'])
  })

  it('leaves a guess out', () => {
    expect(soundPractice([studied('zorp')]).leftOut).toHaveLength(1)
  })
})
