import { describe, expect, it } from 'vitest'
import { nearlySorts } from '../../../src/sets/sorts/nearly-sorts.js'
import { inAlphabet, rankSorts } from '../../../src/sets/sorts/rank-sorts.js'
import { listOf, teachersSorts } from './teachers-sorts.js'
import { wordsOfAWeek } from './words-of-a-week.js'

const toAdd = () => wordsOfAWeek('frog, circus, cent, place, fence, train, paid')

function nearlyIn(list: string) {
  const words = wordsOfAWeek(list)
  const sorts = rankSorts(words)
  return nearlySorts({
    words: inAlphabet(words),
    best: sorts[0]?.score ?? 0,
    taken: sorts.map(({ name }) => name),
    toAdd,
  })
}

describe('nearly a sort', () => {
  it('is one in which a word stands alone, with the two words that would keep it company', () => {
    expect(nearlyIn('crab, cup, cave, corn, cloud, camp, cat, coat, city')).toEqual([
      {
        name: 'hard and soft c',
        add: [{ column: 'soft c', has: 'city', words: ['cent', 'place'] }],
        says: 'Nearly a sort: hard and soft c. Add cent and place to soft c, where city stands alone.',
      },
    ])
  })

  it('is the spellings of one sound', () => {
    expect(nearlyIn('lake, gate, wave, snake, cave, plane, rain').map(({ says }) => says)).toEqual([
      'Nearly a sort: spellings of /EY/ as in day. Add train and paid to ai, where rain stands alone.',
    ])
  })

  it('is none where no two words would fit', () => {
    expect(nearlyIn('ship, shop, shed, fish, chin')).toEqual([])
  })

  it('is none where there is a sort as good', () => {
    const weeks = teachersSorts('teachers-sorts.yaml').filter(({ oddballs }) => oddballs === undefined)
    for (const week of weeks) expect(nearlyIn(listOf(week)), week.week).toEqual([])
  })
})
