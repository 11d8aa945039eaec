import { describe, expect, it } from 'vitest'
import { planOf, toldAtMark } from '../reading.js'

const plan = (spread: string) => `words: [reed]\nspread: ${spread}\nprint: [key]\n`

describe('spread:', () => {
  it.each([
    ['vowel-team', { pattern: 'vowel-team', lists: 3, words: 8 }],
    ['Vowel Team', { pattern: 'vowel-team' }],
    ['{pattern: silent-e, lists: 2, words: 12}', { pattern: 'silent-e', lists: 2, words: 12 }],
  ])('%s', (spread, wish) => {
    expect(planOf(plan(spread)).spread).toMatchObject(wish)
  })

  it.each([
    ['▸digraph', 'unknown pattern "digraph"'],
    ['▸[vowel-team]', 'expected the name of a pattern, found a list'],
    ['▸{lists: 3}', 'a spread has no "pattern"'],
    ['{pattern: vowel-team, lists: ▸1}', '1 is too small'],
    ['{pattern: vowel-team, words: ▸100}', '100 is too large'],
  ])('%s is refused', (spread, message) => {
    expect(toldAtMark(plan(spread))).toEqual([`▸ ${message}`])
  })
})
