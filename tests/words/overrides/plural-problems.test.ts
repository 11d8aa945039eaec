import { describe, expect, it } from 'vitest'
import { told } from './told.js'

describe('a plural that cannot be right', () => {
  it('belongs to no noun and is no word itself', () => {
    expect(told('ran', { plural: 'rans' })).toEqual([
      'plural.yaml:1: error: "rans" is no form of "ran", which is no noun in the dictionary\n  Take the plural out, or add part of speech: noun, if your class uses "ran" as one.',
    ])
  })

  it('does not begin as its word does', () => {
    expect(told('cat', { plural: 'dogs' })).toEqual([
      'plural.yaml:1: error: "dogs" is no form that "cat" could have\n  The dictionary\'s plural is cats.',
    ])
  })
})

describe('a plural that is odd', () => {
  it('belongs to a word that no dictionary calls a noun, and is a word itself', () => {
    expect(told('sing', { plural: 'sings' })[0]).toContain(
      'plural.yaml:1: warning: "sing" has a plural here, and is no noun in the dictionary',
    )
  })

  it('is formed otherwise than the rules and the tables form it', () => {
    expect(told('shelf', { plural: 'shelfs' })).toEqual([
      'plural.yaml:1: warning: "shelfs" is an unusual plural of "shelf"\n  The dictionary\'s plural is shelves.',
    ])
    expect(told('ox', { plural: 'oxes' })[0]).toContain("The dictionary's plural is oxen.")
  })
})

describe('a plural that is hers to choose', () => {
  it.each([
    ['marsh', 'marshes'],
    ['person', 'persons'],
    ['person', 'people'],
    ['fish', 'fishes'],
    ['Heron', 'Herons'],
    ['blorp', 'blorps'],
  ])('of %s as %s is taken in silence', (word, plural) => {
    expect(told(word, { plural })).toEqual([])
  })

  it('stands where she calls the word a noun', () => {
    expect(told('ran', { plural: 'rans', partsOfSpeech: ['noun'] })).toEqual([])
  })
})
