import { describe, expect, it } from 'vitest'
import { rankSorts, sortNamed } from '../../../src/sets/sorts/rank-sorts.js'
import { columnsOf, wordsOfAWeek } from './words-of-a-week.js'

const sort = (list: string, name: string) => sortNamed(wordsOfAWeek(list), name)?.sort
const firstOf = (list: string) => rankSorts(wordsOfAWeek(list))[0]!

describe('by vowels with r', () => {
  const list = 'barn, shark, yard, fork, storm, north, fern, bird, curl, word, warm'

  it('er, ir and ur are one column against ar and or', () => {
    expect(columnsOf(sort(list, 'which vowel with r'))).toEqual({
      ar: 'barn, shark, yard',
      'er, ir, ur': 'bird, curl, fern',
      or: 'fork, north, storm',
    })
  })

  it('word and warm are oddballs', () => {
    expect(sort(list, 'which vowel with r')!.leftoverReasons).toEqual([
      { word: 'warm', why: 'its ar says /AO R/ as in fork', oddball: true },
      { word: 'word', why: 'its or says /ER/ as in fern', oddball: true },
    ])
  })

  it('er, ir and ur alone are sorted by their letters', () => {
    expect(columnsOf(firstOf('fern, herd, perch, bird, girl, dirt, curl, turn, burn'))).toEqual({
      er: 'fern, herd, perch',
      ir: 'bird, dirt, girl',
      ur: 'burn, curl, turn',
    })
  })
})
