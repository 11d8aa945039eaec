import { describe, expect, it } from 'vitest'
import { told as toldOf } from './told.js'

const told = (text: string, division: string) => toldOf(text, { syllables: division.split(' ') })

describe('a division into syllables that cannot be right', () => {
  it.each([
    ['table', 't a b l e', 'the syllables "t" and "b" of "t·a·b·l·e" have no vowel sound', 'ta ble'],
    ['cake', 'ca ke', 'the syllable "ke" of "ca·ke" has no vowel sound', 'cake'],
    ['boat', 'bo at', '"bo·at" has 2 syllables, and only one vowel sound', 'boat'],
    ['pumpkin', 'pu mp kin', 'the syllable "mp" of "pu·mp·kin" has no vowel sound', 'pump kin'],
  ])('%s as %s is an error at its own place', (word, division, message, ours) => {
    expect(told(word, division)).toEqual([
      `syllables.yaml:1: error: ${message}\n  Each syllable has one vowel sound: syllables: ${ours}.`,
    ])
  })

  it('is an error for an invented word too, where a syllable has no vowel letter', () => {
    expect(told('blorpin', 'bl orp in')[0]).toContain('error: the syllable "bl"')
  })
})

describe('a division into syllables that is odd', () => {
  it('has fewer syllables than the word has vowel sounds', () => {
    expect(told('puddle', 'puddle')).toEqual([
      'syllables.yaml:1: warning: "puddle" has one syllable, and the word has 2 vowel sounds\n  Each syllable has one vowel sound: syllables: pud dle.',
    ])
  })

  it('goes against a guess, which may be wrong', () => {
    expect(told('blorpe', 'blor pe')[0]).toContain('warning: the syllable "pe"')
  })
})

describe('a division into syllables that is hers to choose', () => {
  it.each([
    ['market', 'mar ket'],
    ['market', 'mark et'],
    ['fire', 'fire'],
    ['fire', 'fi re'],
    ['every', 'ev ery'],
    ['every', 'ev er y'],
    ['table', 'tab le'],
    ["don't", "don't"],
    ['marsh', 'marsh'],
    ['shh', 'shh'],
  ])('%s as %s is taken in silence', (word, division) => {
    expect(told(word, division)).toEqual([])
  })
})
