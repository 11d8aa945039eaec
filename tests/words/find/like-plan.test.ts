import { describe, expect, it } from 'vitest'
import type { LetterTarget } from '../../../src/plan/plan.js'
import { findWords } from '../../../src/words/find/find-words.js'
import { likePlan } from '../../../src/words/find/like-plan.js'
import { studied } from '../patterns/hand-aligned.js'
import { offered, offeredByHand } from './offered.js'

const digraph: LetterTarget = { kind: 'pattern', pattern: 'consonant-digraph' }
const team: LetterTarget = { kind: 'pattern', pattern: 'vowel-team' }

function goesWith(words: readonly string[], marks: readonly LetterTarget[]) {
  const familiarity = (word: string) => offeredByHand.find(({ text }) => text === word)?.familiarity ?? 0
  return likePlan({ words: words.map(studied), marks, familiarity })
}

describe('the level of a plan', () => {
  const { isOfItsLevel } = goesWith(['marsh', 'thread', 'spring', 'boat'], [])

  it('leaves out its own words', () => {
    expect(isOfItsLevel({ ...offered('marsh'), familiarity: 2900 })).toBe(false)
  })

  it('has as many sounds and syllables as its words, from the fewest to the most', () => {
    const fits = (text: string) => isOfItsLevel({ ...offered(text), familiarity: 2900 })
    expect(['fish', 'bench', 'stream'].map(fits)).toEqual([true, true, true])
    expect(['go', 'rabbit', 'strength'].map(fits)).toEqual([false, false, false])
  })

  it('is no more familiar than its most familiar word, no less than three quarters of them', () => {
    const at = (familiarity: number) => isOfItsLevel({ ...offered('fish'), familiarity })
    const counts = ['marsh', 'thread', 'spring', 'boat']
      .map(word => offeredByHand.find(({ text }) => text === word)!.familiarity)
      .toSorted((a, b) => a - b)
    expect([counts[3]! + 1, counts[3]!, counts[1]!, counts[1]! - 1].map(at)).toEqual([
      false,
      true,
      true,
      false,
    ])
  })
})

describe('words that go with a plan', () => {
  const familiar = (text: string, index: number) => ({ ...offered(text), familiarity: 2900 - index })
  const choice = ['with', 'wish', 'rush', 'math', 'seed'].map(familiar)
  const everyLevel = { marks: [digraph, team], isOfItsLevel: () => true }
  const found = (count: number, marks: readonly LetterTarget[] = everyLevel.marks) =>
    findWords({ goesWith: { ...everyLevel, marks }, count }, choice).map(({ word }) => word.text)

  it('show one of the patterns that it marks', () => {
    expect(found(9)).toEqual(['with', 'wish', 'rush', 'math', 'seed'])
    expect(found(9, [team])).toEqual(['seed'])
    expect(found(9, [{ kind: 'letters', letters: 'sh', place: 'end' }])).toEqual(['wish', 'rush'])
  })

  it('are shared out among the marks, so that a common pattern does not take all places', () => {
    expect(found(3)).toEqual(['with', 'wish', 'seed'])
  })

  it('show a digraph inside a blend where the mark reaches it', () => {
    const marks: readonly LetterTarget[] = [{ ...digraph, insideBlends: true }]
    const words = (targets: readonly LetterTarget[]) =>
      findWords({ goesWith: { marks: targets, isOfItsLevel: () => true }, count: 9 }, [offered('thread')])
    expect(words(marks)).toHaveLength(1)
    expect(words([digraph])).toHaveLength(0)
  })
})
