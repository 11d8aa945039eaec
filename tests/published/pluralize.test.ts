/** Plurals against `pluralize` over the 1,000 most familiar nouns. */
import pluralize from 'pluralize'
import { expect, test } from 'vitest'
import { pluralOf } from '../../src/words/endings/plural.js'
import { openLexicon } from '../../src/words/lexicon/lexicon.js'
import { familiarNouns, isCounted, reasonsByWord } from './familiar-nouns.js'

/** Why ours stands, and the words. */
const explained: Readonly<Record<string, string>> = {
  'two forms in use; the library gives the other one, which we give second': 'money',
  'the plural is in use (the spring rains, nine justices, all our energies), and the library knows none': `rain
    justice energy staff`,
  'not counted: nobody makes a plural of it, and the library adds s': `luck weather nonsense knowledge happiness courage
    underwear stuff honey bread air attention security evidence gold peace smoke south north west magic east milk shame heat
    toast goodness safety harm midnight pride dirt dust protection trash flesh progress presence today
    tomorrow yesterday insurance radar access permission`,
  'not counted; the library turns -lf into -lves': 'golf',
  'ch is /k/, so s alone is added': 'stomach',
}

const reasons = reasonsByWord(explained)

const nouns = familiarNouns(1000)
const differing = nouns.filter(({ word, plural }) => pluralize(word) !== plural.form)

test('94 % and more agree, 98 % of those that have a plural of their own', () => {
  expect(nouns.length).toBe(1000)
  expect(differing.length).toBeLessThanOrEqual(60)
  expect(differing.filter(isCounted).length).toBeLessThanOrEqual(20)
})

test('every disagreement is explained, and no agreement', () => {
  const words = differing.map(({ word }) => word)
  expect(words.filter(word => !reasons.has(word))).toEqual([])
  expect([...reasons.keys()].filter(word => !words.includes(word))).toEqual([])
})

test.each(['monarch monarchs', 'epoch epochs', 'lens lenses', 'virus viruses'])(
  '%s, which the library makes otherwise',
  pair => {
    const [word = '', plural] = pair.split(' ')
    const pronunciation = openLexicon().lookUp(word)?.pronunciations[0] ?? ''
    expect(pluralOf({ text: word, partsOfSpeech: ['noun'], pronunciation })?.form).toBe(plural)
    expect(pluralize(word)).not.toBe(plural)
  },
)
