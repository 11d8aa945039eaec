import { describe, expect, it } from 'vitest'
import { kindOfFirstSyllable } from '../../../src/words/patterns/syllable-types.js'
import { wordsOfAWeek } from '../../sets/sorts/words-of-a-week.js'

const findingIn = (text: string, pattern: string) =>
  wordsOfAWeek(text)[0]!.patterns.find(finding => finding.pattern === pattern)

describe('what a word is made of', () => {
  it.each([
    ['snowball', 'compound', ['snow', 'ball']],
    ['cupcakes', 'compound', ['cup', 'cake']],
    ["can't", 'contraction', ['can', 'not']],
    ["let's", 'contraction', ['let', 'us']],
    ['hopped', 'ending-ed', ['hop', '-ed']],
    ['wolves', 'ending-es', ['wolf', '-es']],
  ] as const)('of %s, as a %s', (text, pattern, parts) => {
    expect(findingIn(text, pattern)!.madeOf).toEqual(parts)
  })

  it('is joined by a rule where it has an ending', () => {
    expect(findingIn('hopped', 'ending-ed')!.rule).toBe('double the last letter, add ed')
    expect(findingIn('hoped', 'ending-ed')!.rule).toBe('drop e, add ed')
  })
})

describe('a prefix', () => {
  it('may weaken the first vowel of its base', () => {
    expect(findingIn('disobey', 'prefix')!.letters).toBe('dis')
  })
})

describe('the kind of the first syllable', () => {
  it.each([
    ['tiger', 'open-syllable'],
    ['rabbit', 'closed-syllable'],
    ['garden', 'r-controlled-syllable'],
    ['rainbow', 'vowel-team-syllable'],
    ['nation', 'open-syllable'],
    ['special', undefined],
    ['vision', undefined],
    ['pigeon', undefined],
  ])('of %s', (text, kind) => {
    const [word] = wordsOfAWeek(text)
    expect(kindOfFirstSyllable({ ...word!, pronunciation: word!.pronunciations[0]! })).toBe(kind)
  })
})
