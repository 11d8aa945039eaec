import { describe, expect, it } from 'vitest'
import { type Filled, rate } from '../../../src/sets/sorts/rate.js'

/** Two full and equal columns of words tied as closely as can be: 1. */
const perfect: Filled = {
  kind: 'spellings of a sound',
  sizes: [4, 4],
  hasWithout: false,
  oddballs: 0,
  outsiders: 0,
  isMarked: false,
  isFeature: false,
}
const scoreOf = (changed: Partial<Filled>) => rate({ ...perfect, ...changed }).score

describe('the formula', () => {
  it('gives 1 to equal full columns of a close tie', () => {
    expect(scoreOf({})).toBe(1)
  })

  it('takes outsiders off by the share that is placed: 8/10', () => {
    expect(scoreOf({ outsiders: 2 })).toBe(0.8)
  })

  it('counts an oddball for three quarters of a word: (8 + 1.5)/10', () => {
    expect(scoreOf({ oddballs: 2 })).toBe(0.95)
  })

  it('takes uneven columns off by Simpson’s index: 2 · (1 − (36 + 4)/64), times 0.875', () => {
    expect(scoreOf({ sizes: [6, 2] })).toBe(0.656)
    // With three words in each it is the index alone: 2 · (1 − (36 + 9)/81).
    expect(scoreOf({ sizes: [6, 3] })).toBe(0.889)
  })

  it('takes columns of two words for thinner', () => {
    expect(scoreOf({ sizes: [2, 2] })).toBe(0.75)
  })

  it('takes five and six columns for many', () => {
    expect(scoreOf({ sizes: [3, 3, 3, 3, 3] })).toBe(0.92)
    expect(scoreOf({ sizes: [3, 3, 3, 3, 3, 3] })).toBe(0.8)
  })

  it('keeps what fits any words below the least score of a sort, even if the plan marks its pattern', () => {
    expect(scoreOf({ kind: 'syllables' })).toBe(0.314)
    expect(scoreOf({ kind: 'syllables', isMarked: true })).toBe(0.32)
  })

  it('raises what the plan marks by two fifths of what it lacks of 1', () => {
    expect(scoreOf({ outsiders: 2, isMarked: true })).toBe(0.88)
    expect(scoreOf({ kind: 'syllables', isMarked: true, isFeature: true })).toBe(0.97)
  })

  it('gives nothing to a single column', () => {
    expect(rate({ ...perfect, sizes: [8] }).fair).toBe(0)
  })
})
