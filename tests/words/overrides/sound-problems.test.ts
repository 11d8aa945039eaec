import { describe, expect, it } from 'vitest'
import { told as toldOf } from './told.js'

const told = (text: string, division: string) => toldOf(text, { sounds: division.split(' ') })

describe('a division into sounds that cannot be right', () => {
  it.each([
    ['coin', 'c o i n', 'oi', 'c oi n'],
    ['phone', 'p h o n e', 'ph', 'ph o n (e)'],
    ['thread', 't h r ea d', 'th', 'th r ea d'],
    ['few', 'f e w', 'ew', 'f ew'],
  ])(
    '%s as %s is an error at its own place: no part of %s spells the sound',
    (word, division, team, ours) => {
      expect(told(word, division)).toEqual([
        `sounds.yaml:1: error: the sounds "${division}" cut "${team}", which spells one sound in "${word}"\n  Keep together what spells one sound: sounds: ${ours}.`,
      ])
    },
  )
})

describe('a division into sounds that is odd', () => {
  it.each([
    ['boat', 'b o a t', 'oa', 'b·o·(a)·t'],
    ['chin', 'c h i n', 'ch', 'c·(h)·i·n'],
    ['eight', 'e i gh t', 'eigh', 'e·(i)·(gh)·t'],
  ])('%s as %s is taken, with a warning that says how it is counted', (word, division, team, counted) => {
    const [warning, ...others] = told(word, division)
    expect(warning).toContain(
      `warning: the sounds "${division}" cut "${team}", which spells one sound in "${word}"; counted as ${counted}`,
    )
    expect(others).toEqual([])
  })

  it('tells of brackets around what the dictionary hears', () => {
    expect(told('car', 'c a (r)')).toEqual([
      'sounds.yaml:1: warning: the dictionary hears the "r" that stands in brackets in "c a (r)"\n  Take the brackets away, or leave it so if your class does not hear it.',
    ])
  })

  it.each([
    ['cake', 'ca ke', 'ca'],
    ['table', 't able', 'able'],
    ['music', 'mu s i c', 'mu'],
  ])('%s as %s has a piece that is more than a sound', (word, division, piece) => {
    expect(told(word, division)[0]).toContain(
      `warning: "${piece}" in the sounds "${division}" is more than a vowel with what follows it, and counts as one sound`,
    )
  })
})

describe('a division into sounds that is hers to choose', () => {
  it.each([
    ['cake', 'c a k e'],
    ['boat', 'b o (a) t'],
    ['knight', 'k n igh t'],
    ['rabbit', 'r a b b i t'],
    ['marsh', 'm a r sh'],
    ['tired', 't ire d'],
    ['walk', 'w al k'],
    ['thank', 'th ank'],
    ['cake', 'c ake'],
    ['pond', 'p o nd'],
    ['nation', 'n a tion'],
    ['picture', 'p i c ture'],
    ['blorp', 'bl o r p'],
  ])('%s as %s is taken in silence', (word, division) => {
    expect(told(word, division)).toEqual([])
  })
})
