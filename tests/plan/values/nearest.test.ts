import { describe, expect, it } from 'vitest'
import { nearestAdvice } from '../../../src/plan/values/nearest.js'

const known = ['consonant-digraph', 'ending-blend', 'trigraph', 'silent-e', 'hard-c', 'soft-c', 'qu', 'noun']
const others = () => new Map([['digraph', 'Write consonant-digraph.']])
const advice = (name: string) => nearestAdvice({ name, known, where: 'They are listed.', others })

describe('an unknown name', () => {
  it.each([
    ['a word of the trade', 'Digraph', 'Write consonant-digraph.'],
    ['a word that a name holds whole', 'blend', 'Did you mean "ending-blend"? They are listed.'],
    ['a slip', 'silnt-e', 'Did you mean "silent-e"? They are listed.'],
    ['two neighbours in each other’s place', 'nuon', 'Did you mean "noun"? They are listed.'],
    ['the one that begins alike, where two are as near', 'haft-c', 'Did you mean "hard-c"? They are listed.'],
    ['a slip in a word of the trade', 'digrapf', 'Write consonant-digraph.'],
    ['nothing near', 'sh', 'They are listed.'],
    ['what another word is as near to', 'memory', 'They are listed.'],
  ])('that is %s: %s', (_what, name, expected) => {
    expect(advice(name)).toBe(expected)
  })

  it.each([
    ['q', 0],
    ['qa', 1],
    ['qabc', 1],
    ['qabcd', 2],
    ['qabcdef', 2],
    ['qabcdefg', 3],
    ['qabcdefghijklm', 3],
  ])('of the length of %s may be %i slips away', (name, slips) => {
    const wrong = (count: number) => `${name}${'x'.repeat(count)}`
    const isOffered = (count: number) =>
      nearestAdvice({ name, known: [wrong(count)], where: '' }).startsWith('Did you mean')
    expect([isOffered(slips) || slips === 0, isOffered(slips + 1)]).toEqual([true, false])
  })
})
