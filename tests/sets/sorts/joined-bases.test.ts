import { describe, expect, it } from 'vitest'
import { rankSorts, sortNamed } from '../../../src/sets/sorts/rank-sorts.js'
import { columnsOf, wordsOfAWeek } from './words-of-a-week.js'

const firstOf = (list: string) => rankSorts(wordsOfAWeek(list))[0]!

describe('compounds', () => {
  it('gather by the word that they share, first or last', () => {
    const found = sortNamed(
      wordsOfAWeek('snowman, snowball, snowflake, sunlight, moonlight, starlight'),
      'which word the compounds share',
    )
    expect(columnsOf(found?.sort)).toEqual({
      light: 'moonlight, starlight, sunlight',
      snow: 'snowball, snowflake, snowman',
    })
  })

  it('gather by the first word where that is what they share', () => {
    expect(columnsOf(firstOf('raincoat, rainbow, raindrop, sunset, sunshine, sunburn'))).toEqual({
      rain: 'rainbow, raincoat, raindrop',
      sun: 'sunburn, sunset, sunshine',
    })
  })
})

describe('contractions', () => {
  it('gather by the word that was made shorter, the us of let’s no is', () => {
    const best = firstOf("can't, didn't, isn't, we'll, they'll, she'll, let's")
    expect(columnsOf(best)).toEqual({
      "not (n't)": "can't, didn't, isn't",
      "will ('ll)": "she'll, they'll, we'll",
    })
    expect(best.leftoverReasons).toEqual([
      { word: "let's", why: "is the only one of its kind: us ('s)", oddball: true },
    ])
  })
})
