import { describe, expect, it } from 'vitest'
import { openLexicon } from '../../../src/words/lexicon/lexicon.js'
import { childSentence } from '../../../src/words/patterns/child-sentences.js'
import { patternNames } from '../../../src/words/patterns/index.js'

const lexicon = openLexicon()

/** What a class calls a vowel is a word of the lesson itself. */
const ofTheLesson: ReadonlySet<string> = new Set(['vowel'])

describe.each(patternNames)('%s, in words for a child', pattern => {
  const sentence = childSentence(pattern) ?? ''

  it('is short', () => {
    expect(sentence).not.toBe('')
    expect(sentence.length).toBeLessThanOrEqual(60)
    expect(sentence.split(' ').length).toBeLessThanOrEqual(10)
  })

  // SUBTLEX-US counts 51 million spoken words: 600 times is about once in an hour of talk, and more.
  it('has no word that is not often heard', () => {
    const words = sentence.match(/[a-z]{3,}/g) ?? []
    const rare = words.filter(
      word => !ofTheLesson.has(word) && (lexicon.lookUp(word)?.familiarity ?? 0) < 600,
    )
    expect(rare.filter(word => !pattern.endsWith(word))).toEqual([])
  })
})
