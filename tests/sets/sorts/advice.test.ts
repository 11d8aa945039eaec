import { describe, expect, it } from 'vitest'
import { adviceOn } from '../../../src/sets/sorts/advice.js'
import { rankedSorts } from '../../../src/sets/sorts/rank-sorts.js'
import { wordsOfAWeek } from './words-of-a-week.js'

const toAdd = () => wordsOfAWeek('frog, cat, circus, cent, place, fence, race, badge')
const adviceFor = (list: string, name: string) =>
  adviceOn({ rated: rankedSorts(wordsOfAWeek(list)).find(({ sort }) => sort.name === name)!, toAdd })

describe('advice on a lop-sided sort', () => {
  it('names two or three words for the thin column, passing over those that fit another or both', () => {
    expect(adviceFor('crab, cup, cave, corn, cloud, camp, city, cell', 'hard and soft c')).toEqual({
      add: [{ column: 'soft c', words: ['cent', 'place'] }],
      takeOut: [],
      says: 'Add cent and place to soft c.',
    })
  })

  it('names three where the other column is twice as full', () => {
    const { add } = adviceFor(
      'crab, cup, cave, corn, cloud, camp, cat, coat, cot, cost, city, cell',
      'hard and soft c',
    )!
    expect(add).toEqual([{ column: 'soft c', words: ['cent', 'place', 'fence'] }])
  })

  it('names the word that spoils it, with the reason', () => {
    expect(adviceFor('crab, cup, cave, city, cell, ice, pond', 'hard and soft c')).toEqual({
      add: [],
      takeOut: [{ word: 'pond', why: 'has no c that is hard or soft' }],
      says: 'Take pond out: it has no c that is hard or soft.',
    })
  })

  it('keeps an oddball, which is worth talking over', () => {
    expect(adviceFor('crab, cup, cave, city, cell, ice, circus', 'hard and soft c')).toBeUndefined()
  })

  it('is silent where nothing is to be mended', () => {
    expect(adviceFor('crab, cup, cave, city, cell, ice', 'hard and soft c')).toBeUndefined()
  })

  it('names no words where fewer than two fit', () => {
    const rated = rankedSorts(wordsOfAWeek('crab, cup, cave, corn, city, cell'))[0]!
    expect(adviceOn({ rated, toAdd: () => wordsOfAWeek('cent, frog') })).toBeUndefined()
  })
})
