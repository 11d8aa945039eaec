/** Plurals against `compromise` over the 1,000 most familiar nouns, each given to it alone and tagged a noun. */
import nlp from 'compromise'
import { expect, test } from 'vitest'
import { familiarNouns } from './familiar-nouns.js'

/** Why ours stands, and the words. */
const explained: Readonly<Record<string, string>> = {
  'the library leaves the word as it is: it takes it for a stuff without a plural, whose plural is in use all the same': `money honey water blood food hair earth history ice peace tea pressure magic skin meat grace cheese sugar safety
    bread wood fate golf china`,
  'the library leaves the word as it is: it takes it for a name or a title':
    'sir buddy mark angel majesty peg buck lesson piper focus carol pierce miller turkey chuck',
  'not counted: nobody makes a plural of it, and the library adds s':
    'fun health weather nonsense garbage courage underwear',
  'already plural': 'others data',
  'fish is the commoner plural; fishes stands second with us': 'fish',
  'a compound of man': 'gentleman',
}

const reasons = new Map(
  Object.entries(explained).flatMap(([reason, words]) =>
    words.split(/\s+/).map(word => [word, reason] as const),
  ),
)

const nouns = familiarNouns(1000)
const theirs = (word: string) => {
  const document = nlp(word)
  document.tag('Noun')
  return document.nouns().toPlural().text()
}
const differing = nouns.filter(({ word, plural }) => theirs(word) !== plural.form).map(({ word }) => word)

test('94 % and more agree', () => expect(differing.length).toBeLessThanOrEqual(60))

test('every disagreement is explained', () => {
  expect(differing.filter(word => !reasons.has(word))).toEqual([])
})
