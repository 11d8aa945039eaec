import { describe, expect, it } from 'vitest'
import type { PlanMark } from '../../../src/plan/plan.js'
import { lessonPatterns, patternsToMark } from '../../../src/sets/lesson/lesson-patterns.js'
import { wordsOfAWeek } from '../sorts/words-of-a-week.js'

const pattern = (name: string): Pick<PlanMark, 'target'> => ({ target: { kind: 'pattern', pattern: name } })

describe('the patterns of a lesson', () => {
  const week = wordsOfAWeek('ship, shed, moth, chin, crab, stem, knee, knot')

  it('are those that the plan marks, in its order, each once', () => {
    const marks = ['silent-letters', 'consonant-digraph', 'silent-letters'].map(pattern)
    expect(lessonPatterns(week, marks)).toEqual(['silent-letters', 'consonant-digraph'])
  })

  it('are what stands on the letters that it marks', () => {
    const marks: readonly Pick<PlanMark, 'target'>[] = [{ target: { kind: 'letters', letters: 'sh' } }]
    expect(lessonPatterns(week, marks)).toEqual(['consonant-digraph'])
  })

  it('are those that three words or more show where it marks none, the commonest first', () => {
    expect(lessonPatterns(week, [])).toEqual(['consonant-digraph'])
  })

  it('are not those of whole words', () => {
    const marks: readonly Pick<PlanMark, 'target'>[] = [
      { target: { kind: 'word', feature: 'part of speech', value: 'noun' } },
    ]
    expect(lessonPatterns(week, marks)).toEqual(['consonant-digraph'])
  })

  it('are short vowels where the words show nothing else', () => {
    expect(lessonPatterns(wordsOfAWeek('mud, hut, bug, sun'), [])).toContain('short-vowel')
  })
})

describe('the patterns to mark where the plan names none', () => {
  it('are none for no words', () => {
    expect(patternsToMark([])).toEqual([])
  })

  it('are four at most, each on two words or more', () => {
    const words = wordsOfAWeek('ship, shed, moth, crab, crow, stem, knee, knot, feet, rain')
    expect(patternsToMark(words)).toEqual([
      'vowel-team',
      'consonant-digraph',
      'beginning-blend',
      'silent-letters',
    ])
  })
})
