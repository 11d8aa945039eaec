import { describe, expect, it } from 'vitest'
import { rankSorts } from '../../../src/sets/sorts/rank-sorts.js'
import { wordsForASort } from '../../../src/sets/sorts/words-for-a-sort.js'
import { wordsOfAWeek } from './words-of-a-week.js'

const toAdd = () => wordsOfAWeek('train, clay, spray, like, chop, time, tray, chest, five, thin, moth, thumb')
const wanted = (list: string) => wordsForASort({ words: wordsOfAWeek(list), toAdd })

describe('words that support no sort', () => {
  it.each(['rain, sail, trail, hay', 'ship, shed, chin', 'night, light, bright'])('are %s', list => {
    expect(rankSorts(wordsOfAWeek(list))).toEqual([])
  })

  it('would, where one that stands alone had company', () => {
    expect(wanted('rain, sail, trail, hay')).toBe(
      'Nearly a sort: spellings of /EY/ as in day. Add clay and spray to ay, where hay stands alone.',
    )
  })

  it('would, where a column of two words is the fullest', () => {
    expect(wanted('ship, shed, chin')).toBe(
      'Nearly a sort: which consonant digraph. Add chop and chest to ch, where chin stands alone.',
    )
  })

  it('would, where all are alike, with three words for another column', () => {
    expect(wanted('night, light, bright, high')).toBe(
      'Nearly a sort: spellings of /AY/ as in pie. All stand under igh; add five, like and time, which stand under i_e.',
    )
  })

  it('would, by the pattern that all show rather than by their last letters', () => {
    expect(wanted('ship, shed, shop')).toMatch(/^Nearly a sort: which consonant digraph/)
  })

  it('are told nothing of a sound that is spelled as ever', () => {
    expect(wanted('cat, hat, mat, sat')).toBe(
      'Nearly a sort: word families. All stand under -at; add clay, spray and tray, which stand under -ay.',
    )
  })

  it('are told nothing where they share nothing', () => {
    expect(wanted('and, the')).toBeUndefined()
  })
})
