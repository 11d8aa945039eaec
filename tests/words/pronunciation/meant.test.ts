import { describe, expect, it } from 'vitest'
import type { WordOverrides } from '../../../src/plan/plan.js'
import { installedLexicon } from '../../../src/words/lexicon/lexicon.js'
import { studyWord } from '../../../src/words/study.js'
import { told } from '../overrides/told.js'

function studied(text: string, overrides: WordOverrides = {}) {
  const word = studyWord({ text, place: { file: 'week.yaml' }, overrides }, installedLexicon())
  if (!word.ok) throw new Error(word.problems[0]?.message)
  return word.value
}

describe('of two words spelled alike', () => {
  it('the first is taken where she says nothing', () => {
    expect(studied('wind').pronunciations[0]).toBe('W IH1 N D')
  })

  it('the one that she means is taken, with its sounds and its patterns, as hers', () => {
    const wind = studied('wind', { meant: 'To turn' })
    expect(wind).toMatchObject({
      pronunciations: ['W AY1 N D', 'W IH1 N D'],
      source: 'teacher',
      overridden: ['meaning'],
    })
    expect(wind.patterns.map(({ pattern }) => pattern)).not.toContain('short-vowel')
    expect(wind.notes).toContain(
      'wind is said in different ways: /W IH1 N D/ (moving air), /W AY1 N D/ (to turn); taken here: yours, /W AY1 N D/',
    )
  })

  it('a draft of a clue is of the first alone', () => {
    expect(studied('wind', { meant: 'moving air' }).clueDraft).toBe('air that moves')
    expect(studied('wind', { meant: 'to turn' }).clueDraft).toBeUndefined()
  })
})

describe('a meaning that cannot be taken', () => {
  it('is none of the word’s', () => {
    expect(told('wind', { meant: 'a storm' })).toEqual([
      'meant.yaml:1: error: "a storm" is no meaning of "wind" that is told apart\n  Write "moving air" or "to turn".',
    ])
  })

  it('is of a word that has but one', () => {
    expect(told('reed', { meant: 'tall grass' })[0]).toContain(
      '"reed" is not told apart from another word spelled alike',
    )
  })
})
