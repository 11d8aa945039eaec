import { describe, expect, it } from 'vitest'
import { rankSorts, sortNamed } from '../../../src/sets/sorts/rank-sorts.js'
import { columnsOf, wordsOfAWeek } from './words-of-a-week.js'

const sort = (list: string, name: string) => sortNamed(wordsOfAWeek(list), name)?.sort

describe('longer words', () => {
  it('have an open or a closed first syllable', () => {
    const [first] = rankSorts(wordsOfAWeek('tiger, robot, music, rabbit, basket, kitten'))
    expect(columnsOf(first)).toEqual({
      'open syllable': 'music, robot, tiger',
      'closed syllable': 'basket, kitten, rabbit',
    })
  })

  it('have a doubled consonant, two different ones, or one, between their vowels', () => {
    expect(
      columnsOf(sort('rabbit, kitten, basket, napkin, tiger, robot', 'what stands between the vowels')),
    ).toEqual({
      'a doubled consonant': 'kitten, rabbit',
      'two or more consonants': 'basket, napkin',
      'one consonant, open syllable': 'robot, tiger',
    })
  })

  it('spell a weak last syllable in several ways', () => {
    expect(
      columnsOf(sort('table, apple, camel, tunnel, petal, metal', 'spellings of the last syllable /AH L/')),
    ).toEqual({ '-al': 'metal, petal', '-el': 'camel, tunnel', '-le': 'apple, table' })
  })

  it('are stressed on one syllable or another', () => {
    expect(columnsOf(sort('garden, otter, around, hotel', 'which syllable is stressed'))).toEqual({
      'first syllable': 'garden, otter',
      'second syllable': 'around, hotel',
    })
  })

  it('are told from words of one syllable by a reason', () => {
    expect(sort('tiger, robot, rabbit, basket, pond', 'kind of first syllable')!.leftoverReasons).toEqual([
      { word: 'pond', why: 'has one syllable' },
    ])
  })
})
