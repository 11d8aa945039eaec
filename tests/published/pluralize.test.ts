/** Plurals against `pluralize` over the 1,000 most familiar nouns. */
import pluralize from 'pluralize'
import { expect, test } from 'vitest'
import { pluralOf } from '../../src/words/endings/plural.js'
import { openLexicon } from '../../src/words/lexicon/lexicon.js'
import { familiarNouns } from './familiar-nouns.js'

const inUse = 'the plural is in use, and the library treats the word as one that has none'
const hasNone = 'not counted: nobody makes a plural of it, and the library adds s'

/** Word → why ours stands. */
const explained: Readonly<Record<string, string>> = {
  money: 'two forms in use; the library gives the other one, which we give second',
  blood: inUse,
  cash: inUse,
  rain: `${inUse} (the spring rains)`,
  justice: `${inUse} (nine justices)`,
  mail: inUse,
  energy: `${inUse} (all our energies)`,
  staff: `${inUse} (two staffs)`,
  luck: hasNone,
  weather: hasNone,
  nonsense: hasNone,
  knowledge: hasNone,
  happiness: hasNone,
  courage: hasNone,
  underwear: hasNone,
  golf: 'not counted; the library turns -lf into -lves',
  stomach: 'ch is /k/, so s alone is added',
  focus: 'focuses in schools; foci in physics',
}

const nouns = familiarNouns(1000)
const differing = nouns.filter(({ word, plural }) => pluralize(word) !== plural.form).map(({ word }) => word)

test('98 % and more agree', () => {
  expect(nouns.length).toBe(1000)
  expect(differing.length).toBeLessThanOrEqual(20)
})

test('every disagreement is explained', () => {
  expect(differing.filter(word => explained[word] === undefined)).toEqual([])
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
