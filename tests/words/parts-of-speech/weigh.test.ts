import { describe, expect, test } from 'vitest'
import { readFamiliarity } from '../../../src/words/lexicon/sources.js'
import { readUses, type Use } from '../../../src/words/parts-of-speech/uses.js'
import { partsByWeight } from '../../../src/words/parts-of-speech/weigh.js'

const heard = readFamiliarity()
const usesOf = readUses(word => heard.get(word)?.count ?? 0)

const use: Use = {
  part: 'noun',
  count: 5,
  share: 1,
  senses: 1,
  thing: 0,
  deed: 0,
  shown: -2,
  apart: 0,
  past: 0,
}
const verb: Use = { ...use, part: 'verb' }

describe('of two uses met equally often', () => {
  test('the noun is first where it is a thing', () => {
    expect(partsByWeight([{ ...use, thing: 1 }, verb])).toEqual(['noun', 'verb'])
  })

  test('the verb is first where the noun is what one does and speech has the -ing more than the plural', () => {
    expect(
      partsByWeight([
        { ...use, deed: 1, shown: -4 },
        { ...verb, shown: -1 },
      ]),
    ).toEqual(['verb', 'noun'])
  })
})

test('a rare use is left out', () => {
  expect(
    partsByWeight([
      { ...use, count: 100 },
      { ...verb, count: 0 },
    ]),
  ).toEqual(['noun'])
})

test('a rare verb stays where its past is common', () => {
  expect(
    partsByWeight([
      { ...use, count: 100 },
      { ...verb, count: 0, past: 0.1 },
    ]),
  ).toEqual(['noun', 'verb'])
})

describe('by the evidence alone, without the tables', () => {
  test.each([
    ['leap', 'verb'],
    ['twitch', 'verb'],
    ['hum', 'verb'],
    ['shrink', 'verb'],
    ['throb', 'verb'],
    ['peek', 'verb'],
    ['glide', 'verb'],
    ['whine', 'verb'],
    ['humming', 'verb'],
    ['stump', 'noun'],
    ['sling', 'noun'],
    ['freckle', 'noun'],
    ['hem', 'noun'],
    ['sunburn', 'noun'],
    ['birch', 'noun'],
    ['cod', 'noun'],
    ['fleet', 'noun'],
    ['thinner', 'adjective'],
    ['exciting', 'adjective'],
  ])('%s is a %s first', (word, part) => expect(partsByWeight(usesOf(word))[0]).toBe(part))

  test.each(['snooze', 'brake'])('%s is a verb too', word => {
    expect(partsByWeight(usesOf(word))).toContain('verb')
  })
})
