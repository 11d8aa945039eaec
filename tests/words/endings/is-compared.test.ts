import { describe, expect, it } from 'vitest'
import { isCompared } from '../../../src/words/endings/is-compared.js'
import type { PartOfSpeech } from '../../../src/words/word.js'

/** How often each word is heard, and as what. */
const heard: Readonly<
  Record<string, readonly [familiarity: number, partsOfSpeech: readonly PartOfSpeech[]]>
> = {
  big: [9000, ['adjective']],
  bigger: [2765, ['adjective']],
  biggest: [2085, ['adjective']],
  light: [5000, ['noun', 'adjective']],
  lighter: [457, ['adjective', 'noun']],
  lightest: [11, ['adjective']],
  glad: [7000, ['adjective']],
  gladder: [1, ['adjective']],
  square: [900, ['noun', 'adjective']],
  squarest: [2, ['adjective']],
  own: [9000, ['adjective']],
  owner: [1185, ['noun']],
  next: [9000, ['adjective']],
  yellow: [900, ['adjective']],
  yellower: [0, ['adjective']],
  muddy: [90, ['adjective']],
  daily: [600, ['adjective']],
  better: [40494, ['adjective', 'adverb']],
  betterest: [3, ['adjective']],
  last: [9000, ['adjective']],
  laster: [2, ['adjective']],
  lastest: [2, ['adjective']],
}

function compared(word: string, er: string, est: string): boolean {
  return isCompared({ word, er, est }, text => {
    const entry = heard[text]
    return entry === undefined ? undefined : { familiarity: entry[0], partsOfSpeech: entry[1] }
  })
}

describe('an adjective is compared by -er and -est', () => {
  it('when both forms are heard', () => {
    expect(compared('big', 'bigger', 'biggest')).toBe(true)
    expect(compared('light', 'lighter', 'lightest')).toBe(true)
  })

  it('when one of them is, and the word is an adjective before all else', () => {
    expect(compared('glad', 'gladder', 'gladdest')).toBe(true)
    expect(compared('square', 'squarer', 'squarest')).toBe(false)
  })

  it('when it ends in -y, but not in -ly', () => {
    expect(compared('muddy', 'muddier', 'muddiest')).toBe(true)
    expect(compared('daily', 'dailier', 'dailiest')).toBe(false)
  })

  it('when its forms are irregular; such a form is not compared again', () => {
    expect(compared('good', 'better', 'best')).toBe(true)
    expect(compared('better', 'betterer', 'betterest')).toBe(false)
  })

  it('not when nobody says so, or the form is another word', () => {
    expect(compared('next', 'nexter', 'nextest')).toBe(false)
    expect(compared('own', 'owner', 'ownest')).toBe(false)
    expect(compared('yellow', 'yellower', 'yellowest')).toBe(false)
  })

  it('not when a table says that it is not, although the forms are heard now and then', () => {
    expect(compared('last', 'laster', 'lastest')).toBe(false)
  })
})
