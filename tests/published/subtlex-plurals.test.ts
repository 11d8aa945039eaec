/**
 * Nouns that we do not count against the counts of SUBTLEX-US (Brysbaert and New 2009): in 51 million words of speech
 * their plurals are hardly heard, while those of nouns that we count are.
 */
import { expect, test } from 'vitest'
import { openLexicon } from '../../src/words/lexicon/lexicon.js'
import { familiarNouns, isCounted, reasonsByWord } from './familiar-nouns.js'

/** Why a plural form is heard all the same, and the words. */
const explained: Readonly<Record<string, string>> = {
  'the verb with s, or a name': 'smoke weather hail hunger butter hay',
  'another sense: complaints, hard skin on toes, policemen, the living daylights, copies':
    'beef corn copper daylight carbon',
  'met now and then (old hatreds, petty jealousies), and a class would not be asked for it':
    'hatred jealousy',
}

const lexicon = openLexicon()
const heard = (word: string) => lexicon.lookUp(word)?.familiarity ?? 0
/** By spelling alone: what the word would become if it were counted. */
function inS(word: string): string {
  if (/(?:s|x|z|ch|sh)$/.test(word)) return `${word}es`
  return /[^aeiou]y$/.test(word) ? `${word.slice(0, -1)}ies` : `${word}s`
}
const share = (word: string) => heard(inS(word)) / heard(word)

const nouns = familiarNouns(3000)
const notCounted = nouns.filter(noun => !isCounted(noun)).map(({ word }) => word)
const counted = nouns.filter(({ plural }) => plural.rule === 'add s').map(({ word }) => word)
const median = (shares: readonly number[]) => shares.toSorted((a, b) => a - b)[shares.length >> 1]!
const reasons = reasonsByWord(explained)

test('are more than 150 of the 3,000 most familiar', () => expect(notCounted.length).toBeGreaterThan(150))

test('half of them have a plural once in 400 times at most, half of those that we count once in ten at least', () => {
  expect(median(notCounted.map(share))).toBeLessThan(1 / 400)
  expect(median(counted.map(share))).toBeGreaterThan(1 / 10)
})

test('a form in s heard more than once in fifty times is explained', () => {
  const often = notCounted.filter(word => share(word) > 0.02)
  expect(often.filter(word => !reasons.has(word))).toEqual([])
  expect([...reasons.keys()].filter(word => !often.includes(word))).toEqual([])
})
