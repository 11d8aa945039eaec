import { describe, expect, it } from 'vitest'
import { openLexicon } from '../../../src/words/lexicon/lexicon.js'
import { lettersNeeded } from '../../../src/words/overrides/pattern-problems.js'
import { patterns } from '../../../src/words/patterns/index.js'
import { studyWord } from '../../../src/words/study.js'
import { told } from './told.js'

const also = (word: string, pattern: string, letters: string) =>
  told(word, { alsoPatterns: [{ pattern, letters }] })

describe('a finding that is added and cannot be right', () => {
  it.each([
    ['bed', 'consonant-le', 'be'],
    ['bed', 'double-consonant', 'd'],
    ['bed', 'y-as-vowel', 'e'],
    ['reed', 'beginning-blend', 're'],
    ['pond', 'three-letter-blend', 'nd'],
    ['pond', 'r-controlled', 'o'],
    ['marsh', 'ending-ed', 'sh'],
  ])('in %s: %s on %s is an error', (word, pattern, letters) => {
    const [problem, ...others] = also(word, pattern, letters)
    expect(problem).toContain(
      `also.yaml:1: error: the letters "${letters}" of "${word}" cannot be ${pattern}`,
    )
    expect(others).toEqual([])
  })

  it('comes with what the pattern is and a word that shows it', () => {
    expect(also('bed', 'consonant-le', 'be')[0]).toContain('for example dle in puddle.')
  })
})

describe('a finding that is added and is odd', () => {
  it.each([
    ['lid', 'silent-letters', 'd', 'every letter of it is heard'],
    ['recipe', 'silent-e', 'e', 'its e is heard'],
    ['cane', 'short-vowel', 'e', 'no vowel is heard in it'],
    ['whale', 'consonant-le', 'le', 'no vowel is heard in it'],
  ])('in %s: %s on %s is a warning', (word, pattern, letters, why) => {
    expect(also(word, pattern, letters)[0]).toContain(
      `also.yaml:1: warning: "${letters}" of "${word}" is called ${pattern}, and ${why}`,
    )
  })
})

describe('a finding that is hers to add', () => {
  it.each([
    ['castle', 'silent-letters', 'st'],
    ['lake', 'vowel-team', 'a_e'],
    ['lake', 'silent-e', 'a_e'],
    ['table', 'consonant-le', 'le'],
    ['shrub', 'beginning-blend', 'shr'],
    ['marsh', 'homophone', 'marsh'],
  ])('in %s: %s on %s is taken in silence', (word, pattern, letters) => {
    expect(also(word, pattern, letters)).toEqual([])
  })

  it('is not found twice where the word shows it already', () => {
    const overrides = { alsoPatterns: [{ pattern: 'consonant-le', letters: 'ble' }] }
    const word = studyWord({ text: 'table', place: { file: 'week.yaml' }, overrides }, openLexicon())
    expect(word.ok && word.value.patterns.filter(one => one.pattern === 'consonant-le')).toHaveLength(1)
  })
})

describe('a finding that is taken away', () => {
  it('and is not there is a warning', () => {
    expect(told('mud', { notPatterns: [{ pattern: 'digraph-blend' }] })).toEqual([
      'not.yaml:1: warning: "mud" does not show digraph-blend: nothing is taken away\n  Take it out; "oaktag study mud" tells what the word shows.',
    ])
  })

  it('and is not on those letters is a warning that says on which it is', () => {
    expect(told('finch', { notPatterns: [{ pattern: 'digraph-blend', letters: 'fi' }] })[0]).toContain(
      'warning: "finch" does not show digraph-blend on "fi", but on "nch"',
    )
  })

  it.each([
    ['finch', 'digraph-blend', 'nch'],
    ['finch', 'digraph-blend', undefined],
    ['mud', 'closed-syllable', undefined],
  ])('and is there is taken away in silence: %s, %s %s', (word, pattern, letters) => {
    const notPatterns = [letters === undefined ? { pattern } : { pattern, letters }]
    expect(told(word, { notPatterns })).toEqual([])
  })
})

describe('what the letters of a pattern must be', () => {
  const lexicon = openLexicon()
  const words = [...lexicon.entries()].filter(({ pronunciations }) => pronunciations.length > 0)

  it('holds of all that the tool finds in the 5,000 most familiar words', () => {
    const against = words.slice(0, 5000).flatMap(({ word }) => {
      const studied = studyWord({ text: word, place: { file: 'words.txt' }, overrides: {} }, lexicon)
      const findings = studied.ok ? studied.value.patterns : []
      return findings
        .filter(({ pattern, letters }) => lettersNeeded[pattern]?.test(letters.replace('_', '')) === false)
        .map(({ pattern, letters }) => `${word}: ${pattern} ${letters}`)
    })
    expect(against).toEqual([])
  })

  it('is said of patterns that there are', () => {
    const names = patterns.map(({ name }) => name)
    expect(Object.keys(lettersNeeded).filter(name => !names.includes(name))).toEqual([])
  })
})
