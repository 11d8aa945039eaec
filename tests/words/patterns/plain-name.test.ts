import { describe, expect, it } from 'vitest'
import { patterns } from '../../../src/words/patterns/index.js'
import { plainName } from '../../../src/words/patterns/plain-name.js'

describe('a pattern in plain words', () => {
  it.each([
    ['consonant-digraph', 'consonant digraph'],
    ['three-letter-blend', 'three-letter blend'],
    ['r-controlled', 'r-controlled vowel'],
    ['r-controlled-syllable', 'r-controlled syllable'],
    ['consonant-le', 'consonant-le'],
    ['y-as-vowel', 'y as a vowel'],
    ['ending-ing', 'ending -ing'],
    ['silent-e', 'silent e'],
  ])('%s is %s', (name, plain) => {
    expect(patterns.map(pattern => pattern.name)).toContain(name)
    expect(plainName(name)).toBe(plain)
  })
})
