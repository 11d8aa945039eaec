import { describe, expect, test } from 'vitest'
import { endingOf } from '../../../src/words/endings/recognise.js'
import { openLexicon } from '../../../src/words/lexicon/lexicon.js'

const lexicon = openLexicon()
const found = (text: string) => {
  const pronunciation = lexicon.lookUp(text)?.pronunciations[0]
  return endingOf({
    text,
    ...(pronunciation === undefined ? {} : { pronunciation }),
    isWord: base => (lexicon.lookUp(base)?.partsOfSpeech.length ?? 0) > 0 && !lexicon.lookUp(base)?.name,
    pronunciationsOf: base => lexicon.lookUp(base)?.pronunciations ?? [],
  })
}

describe('base and rule', () => {
  test.each([
    ['jumped', 'ed', 'jump', 'add ed', 't'],
    ['sailed', 'ed', 'sail', 'add ed', 'd'],
    ['waited', 'ed', 'wait', 'add ed', 'id'],
    ['carried', 'ed', 'carry', 'y to i, add ed', 'd'],
    ['swimming', 'ing', 'swim', 'double the last letter, add ing', null],
    ['baking', 'ing', 'bake', 'drop e, add ing', null],
    ['falling', 'ing', 'fall', 'add ing', null],
    ['baker', 'er', 'bake', 'drop e, add er', null],
    ['bigger', 'er', 'big', 'double the last letter, add er', null],
    ['happiest', 'est', 'happy', 'y to i, add est', null],
    ['boats', 's', 'boat', 'add s', null],
    ['foxes', 'es', 'fox', 'add es after ch, sh, s, x, z', null],
    ['wolves', 'es', 'wolf', 'f to v, add es', null],
    ['berries', 'es', 'berry', 'y to i, add es', null],
  ])('%s', (text, ending, base, rule, sound) => {
    expect(found(text)).toMatchObject({ ending, base, rule, sound })
  })
})

test.each([
  'river',
  'corner',
  'water',
  'king',
  'need',
  'bed',
  'forest',
  'bus',
  'glass',
  'number',
  'tiger',
  'morning',
])('%s has none', text => expect(found(text)).toBeNull())

test('no list of words, no evidence, no finding', () => {
  expect(endingOf({ text: 'jumped' })).toBeNull()
})
