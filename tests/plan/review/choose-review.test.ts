import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { PlanWord } from '../../../src/plan/plan.js'
import { chooseReview, type WeekOfWords } from '../../../src/plan/review/choose-review.js'
import { isDue } from '../../../src/plan/review/due.js'

const wordOf = (text: string): PlanWord => ({ text, place: { file: 'list' }, overrides: {} })
const week = (name: string, text: string): WeekOfWords => ({ name, words: text.split(' ').map(wordOf) })
const share = (part: number) => ({ part, text: String(part) })
const own = (count: number) => Array.from({ length: count }, (_, index) => wordOf(`own-${index}`))

/** `reed 1`: the word, and how many weeks ago. */
const chosen = (earlier: readonly WeekOfWords[], ownWords: readonly PlanWord[], part = 1 / 4) =>
  chooseReview({ earlier, own: ownWords, share: share(part) }).words.map(
    ({ text, cameBack }) => `${text} ${cameBack?.weeksAgo}`,
  )

describe('the words that come back', () => {
  it('are of the weeks that are due, one of each in turn, the latest first', () => {
    const weeks = [week('a', 'ash axe ant'), week('b', 'bat bee bun'), week('c', 'cat cow cub')]
    expect(chosen(weeks, own(9))).toEqual(['cat 1', 'cub 1', 'ant 3'])
  })

  it('stand well apart in a list that is in order', () => {
    expect(chosen([week('a', 'ship shop fish chip chat rich thin moth')], own(12))).toEqual([
      'ship 1',
      'chat 1',
      'fish 1',
      'thin 1',
    ])
  })

  it('are others of the list at its next turn', () => {
    const weeks = [week('a', 'ant ape axe ash'), week('b', 'bat bee bun'), week('c', 'cow')]
    expect(chosen(weeks.slice(0, 1), own(3))).toEqual(['ant 1'])
    expect(chosen(weeks, own(6))).toEqual(['cow 1', 'axe 3'])
  })

  it('are none of the week’s own, whatever their capitals', () => {
    expect(chosen([week('a', 'May bat')], [wordOf('may'), ...own(5)], 1 / 2)).toEqual(['bat 1'])
  })

  it('are of the later of two weeks that had them', () => {
    expect(chosen([week('a', 'ant bat'), week('b', 'ant cow'), week('c', 'dog')], own(9), 1 / 2)).toEqual([
      'dog 1',
      'bat 3',
    ])
  })

  it('keep what was written of them', () => {
    const earlier = [{ name: 'week-1', words: [{ ...wordOf('marsh'), clue: 'wet land' }] }]
    expect(chooseReview({ earlier, own: own(3), share: share(1 / 4) }).words).toEqual([
      { ...wordOf('marsh'), clue: 'wet land', cameBack: { from: 'week-1', weeksAgo: 1 } },
    ])
  })

  it('are each due, each once, and no more than the share, whatever the lists', () => {
    const words = fc.array(fc.constantFrom(...'abcdefghijklmnop'), { maxLength: 8 })
    const lists = fc.array(
      fc.uniqueArray(fc.constantFrom(...'abcdefghijklmnop'), { minLength: 1, maxLength: 8 }),
      { maxLength: 20 },
    )
    fc.assert(
      fc.property(lists, words, fc.double({ min: 0.05, max: 0.75, noNaN: true }), (earlier, mine, part) => {
        const request = {
          earlier: earlier.map(list => ({ name: '', words: list.map(wordOf) })),
          own: [...new Set(mine)].map(wordOf),
          share: share(part),
        }
        const { words: back, wanted } = chooseReview(request)
        const texts = back.map(({ text }) => text)
        expect(new Set(texts).size).toBe(texts.length)
        expect(back.length).toBeLessThanOrEqual(wanted)
        expect(back.every(({ cameBack }) => isDue(cameBack!.weeksAgo))).toBe(true)
        expect(texts.filter(text => mine.includes(text))).toEqual([])
      }),
    )
  })

  it('each come back before any of the list comes back twice', () => {
    const first = 'ant ape axe ash arm'
    const others = Array.from({ length: 30 }, (_, index) => week('', `w${index}`))
    const back = others.flatMap((_, index) =>
      chosen([week('a', first), ...others.slice(0, index)], own(30), 3 / 4).filter(word => /^a/.test(word)),
    )
    expect(new Set(back.slice(0, 5).map(word => word.split(' ')[0])).size).toBe(5)
  })
})
