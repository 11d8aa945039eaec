import { describe, expect, it } from 'vitest'
import { rankSorts, sortNamed } from '../../../src/sets/sorts/rank-sorts.js'
import { columnsOf, wordsOfAWeek } from './words-of-a-week.js'

const sort = (list: string, name: string) => sortNamed(wordsOfAWeek(list), name)?.sort
const firstOf = (list: string) => rankSorts(wordsOfAWeek(list))[0]!

describe('by the spelling of vowels', () => {
  it('short comes before long, and letters that say two things have a key word', () => {
    const best = firstOf('cap, hat, bag, cake, lake, gate, rain, sail, mail, day, hay, clay')
    expect(best.columns.map(({ title }) => title)).toEqual(['short a', 'a_e', 'ai', 'ay'])
  })

  it('longer words are sorted by their stressed vowel', () => {
    expect(columnsOf(sort('rabbit, napkin, otter, robin', 'which vowel spelling'))).toEqual({
      'short a': 'napkin, rabbit',
      'short o': 'otter, robin',
    })
  })

  it('a word whose letters say something else is an oddball', () => {
    const found = sort('cake, lake, rain, sail, said, have', 'which vowel spelling')!
    expect(found.leftoverReasons).toEqual([
      { word: 'have', why: 'its a_e says /AE/ as in hat', oddball: true },
      { word: 'said', why: 'its ai says /EH/ as in bed', oddball: true },
    ])
  })
})

describe('by the kind of vowel', () => {
  const list = 'mud, moss, duck, reed, seal, toad, crane, slime, hole'

  it('a silent e’s vowel is one kind', () => {
    expect(columnsOf(sort(list, 'kind of vowel'))).toEqual({
      'short vowel': 'duck, moss, mud',
      'vowel team': 'reed, seal, toad',
      'silent e': 'crane, hole, slime',
    })
  })

  it('have, with its silent e and its short vowel, is an oddball', () => {
    expect(sort(`${list}, have`, 'kind of vowel')!.leftoverReasons[0]!.word).toBe('have')
    expect(sort(`${list}, have`, 'short or long vowel')!.leftoverReasons[0]).toEqual({
      word: 'have',
      why: 'its a_e says /AE/ as in hat',
      oddball: true,
    })
  })

  it('a word of two syllables and one with r have a reason of their own', () => {
    expect(sort(`${list}, rabbit, marsh`, 'short or long vowel')!.leftoverReasons).toEqual([
      { word: 'marsh', why: 'has a vowel with an r' },
      { word: 'rabbit', why: 'has more than one syllable' },
    ])
  })
})

describe('by word families', () => {
  it('words end alike in letters and sounds', () => {
    expect(columnsOf(sort('cake, bake, have, cave, wave, rock, dock', 'word families'))).toEqual({
      '-ake': 'bake, cake',
      '-ave': 'cave, wave',
      '-ock': 'dock, rock',
    })
  })
})

describe('by the vowels of words that sound alike', () => {
  it('each spelling is a column, whichever the sounds are', () => {
    const found = sort('sea, see, meat, meet, tail, tale, sail, sale', 'spellings of words that sound alike')
    expect(columnsOf(found)).toEqual({
      a_e: 'sale, tale',
      ai: 'sail, tail',
      ea: 'meat, sea',
      ee: 'meet, see',
    })
  })

  it('a word that sounds like no other is left over', () => {
    const found = sort('sea, see, meat, meet, frog', 'spellings of words that sound alike')!
    expect(found.leftoverReasons).toEqual([{ word: 'frog', why: 'sounds like no other word of the list' }])
  })
})
