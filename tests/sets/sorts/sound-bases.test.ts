import { describe, expect, it } from 'vitest'
import { rankSorts, sortNamed } from '../../../src/sets/sorts/rank-sorts.js'
import { columnsOf, wordsOfAWeek } from './words-of-a-week.js'

const sort = (list: string, name: string) => sortNamed(wordsOfAWeek(list), name)?.sort
const firstOf = (list: string) => rankSorts(wordsOfAWeek(list))[0]!

describe('by the spellings of one sound', () => {
  it('a vowel and its silent e are one spelling', () => {
    expect(columnsOf(sort('cake, gate, bay, clay', 'spellings of /EY/ as in day'))).toEqual({
      a_e: 'cake, gate',
      ay: 'bay, clay',
    })
  })

  it('said, have and they are oddballs among those of long a', () => {
    const best = firstOf('lake, gate, wave, rain, sail, trail, hay, clay, spray, said, have, they')
    expect(columnsOf(best)).toEqual({
      a_e: 'gate, lake, wave',
      ai: 'rain, sail, trail',
      ay: 'clay, hay, spray',
    })
    expect(best.leftoverReasons).toEqual([
      { word: 'have', why: 'its a_e says /AE/ as in hat', oddball: true },
      { word: 'said', why: 'its ai says /EH/ as in bed', oddball: true },
      { word: 'they', why: 'is the only one of its kind: ey', oddball: true },
    ])
  })

  it('a consonant at the end keeps its silent e: ck, k, ke', () => {
    expect(
      columnsOf(sort('duck, sock, lake, bike, milk, desk', 'spellings of /K/ as in kite at the end')),
    ).toEqual({
      ck: 'duck, sock',
      k: 'desk, milk',
      ke: 'bike, lake',
    })
  })

  it('a consonant at the beginning is a sort of its own', () => {
    expect(columnsOf(sort('cat, cup, kite, king', 'spellings of /K/ as in kite at the beginning'))).toEqual({
      c: 'cat, cup',
      k: 'king, kite',
    })
  })
})

describe('by the sounds of one spelling', () => {
  it('each is called after the shortest word that has it', () => {
    expect(columnsOf(sort('leaf, beach, sea, bread, thread', 'how ea sounds'))).toEqual({
      'ea as in sea': 'beach, leaf, sea',
      'ea as in bread': 'bread, thread',
    })
  })

  it('y says one thing at the beginning and two at the end', () => {
    expect(columnsOf(sort('yes, yard, fly, cry, baby, city', 'how y sounds'))).toEqual({
      'y as in yes': 'yard, yes',
      'y as in cry': 'cry, fly',
      'y as in baby': 'baby, city',
    })
  })

  it('y at the end says long i or long e', () => {
    expect(columnsOf(sort('fly, cry, sky, pony, baby, city', 'how y at the end sounds'))).toEqual({
      'y as in cry': 'cry, fly, sky',
      'y as in baby': 'baby, city, pony',
    })
  })
})

describe('a word that is said in two ways', () => {
  it('is left over with a word of that', () => {
    const { leftoverReasons } = firstOf('chair, hair, pair, care, share, dare, bear, pear, wear, tear')
    expect(leftoverReasons).toEqual([
      {
        word: 'tear',
        why: 'its ear says /IH R/ as in deer (said in another way, it may have a column)',
        oddball: true,
      },
    ])
  })
})

describe('by number', () => {
  it('sounds and syllables stand from the fewest to the most', () => {
    const list = 'reed, weed, bread, thread, rabbit, robin'
    expect(sort(list, 'how many sounds')!.columns.map(({ title }) => title)).toEqual([
      '3 sounds',
      '4 sounds',
      '5 sounds',
    ])
    expect(columnsOf(sort(list, 'how many syllables'))).toEqual({
      '1 syllable': 'bread, reed, thread, weed',
      '2 syllables': 'rabbit, robin',
    })
  })
})
