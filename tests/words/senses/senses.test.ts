import { describe, expect, test } from 'vitest'
import { readFamiliarity } from '../../../src/words/lexicon/sources.js'
import { draftFrom } from '../../../src/words/senses/draft.js'
import { gatherSenses, plainDrafts } from '../../../src/words/senses/gather.js'
import type { PartOfSpeech } from '../../../src/words/word.js'

const draft = (word: string, gloss: string, strange: readonly string[] = [], unfit: readonly string[] = []) =>
  draftFrom({
    word,
    gloss,
    familiarity: one => (strange.includes(one) ? 0 : 1000),
    isUnfit: one => unfit.includes(one),
  })

describe('a gloss cut to a draft', () => {
  test('the first clause, without examples and brackets', () => {
    expect(draft('shore', 'the land along the edge of a body of water; "we walked (slowly)"')).toBe(
      'the land along the edge of a body of water',
    )
    expect(draft('ebb', '(of water) flow back; "the tide"')).toBe('flow back')
  })

  test('a long one at a boundary that leaves a phrase', () => {
    expect(
      draft(
        'ferry',
        'a boat for people and their cars, going there and back over the same water many times a day',
      ),
    ).toBe('a boat for people and their cars')
    expect(draft('ferry', `a ${'very '.repeat(20)}long gloss without a boundary`)).toBeUndefined()
  })

  test.each([
    ['it names the word', 'sail', 'go by sailing boat', [], []],
    ['it has words that a child does not know', 'crab', 'decapod animal with claws', ['decapod'], []],
    ['it has words unfit for children', 'pub', 'a house that sells ale', [], ['ale']],
    ['the sense is no help to a class', 'bread', 'slang for money', [], []],
  ])('nothing when %s', (_why, word, gloss, strange, unfit) => {
    expect(draft(word, gloss, strange, unfit)).toBeUndefined()
  })
})

describe('drafts gathered', () => {
  const heard = readFamiliarity()
  const noun: readonly PartOfSpeech[] = ['noun']
  const found = gatherSenses({
    words: ['frog', 'shore', 'gun', 'taxi'],
    partsOfSpeech: () => noun,
    familiarity: word => heard.get(word)?.count ?? 0,
    isUnfit: word => word === 'gun',
  })

  test('our own plain one comes first', () => expect(found.get('frog')?.[0]).toBe(plainDrafts().get('frog')))

  test("then the lexicon's, at most three", () => {
    expect(found.get('taxi')).toContain('a car that you pay to ride in')
    expect(Math.max(...[...found.values()].map(drafts => drafts.length))).toBeLessThanOrEqual(3)
  })

  test('none for a word unfit for children', () => expect(found.has('gun')).toBe(false))
})

describe('our own plain drafts', () => {
  test.each([...plainDrafts()])('%s: short, and without the word itself', (word, text) => {
    expect(text.length).toBeLessThanOrEqual(64)
    expect(text.toLowerCase().split(/[^a-z]+/)).not.toContain(word)
  })
})
