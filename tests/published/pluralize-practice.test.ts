/** Every plural that a practice page may ask for, against `pluralize`: the nouns that `find` offers, about 6,900. */
import pluralize from 'pluralize'
import { expect, test } from 'vitest'
import { pluralAsked } from '../../src/sets/practice/plurals.js'
import { openOfferedWords } from '../../src/words/find/offered-file.js'
import { installedLexicon } from '../../src/words/lexicon/lexicon.js'
import { studyWord } from '../../src/words/study.js'
import { reasonsByWord } from './familiar-nouns.js'

/** Why ours stands, and the words. */
const explained: Readonly<Record<string, string>> = {
  'the library knows no plural of it, or leaves a word in s, a or n as it is': `rain justice energy staff aid agenda nova
    supernova specimen abdomen omen regimen pike carp whiting canvas cosmos lens marquis pelvis bias thermos diocese
    archdiocese pancreas haggis rhinoceros sassafras mantis metropolis cyclops goldilocks`,
  'ch is /k/, so s alone is added': 'stomach tech loch monarch',
  'es after z, which two are in whiz and fez; the library adds s alone':
    'waltz blitz topaz klutz hertz whiz fez',
  'the library has the Latin or Greek plural, we the English one': 'virus symposium quorum stigma terminus',
  'no compound of man; the library makes -men': 'shaman talisman',
  'keeps its f; the library makes -ves': 'gulf',
  'es or s after o, where dictionaries give ours first': 'dingo veto allegro embargo',
  'one and many are the same; the library adds s or, to offspring, takes it for one':
    'offspring spacecraft hovercraft halibut',
  'ey keeps its y; the library makes -ies': 'smiley',
}

const reasons = reasonsByWord(explained)

const asked = openOfferedWords().flatMap(({ text, sortable }) => {
  // What is no noun is asked for by no page, and studied here for nothing.
  if (sortable.partsOfSpeech[0] !== 'noun' || sortable.plural === null) return []
  const word = studyWord({ text, place: { file: 'test' }, overrides: {} }, installedLexicon())
  const plural = word.ok ? pluralAsked(word.value) : { why: 'not studied' }
  return 'asked' in plural ? [{ text, plural: plural.asked.answer }] : []
})
const differing = asked.filter(({ text, plural }) => pluralize(text) !== plural).map(({ text }) => text)

test('more than 99 % of thousands agree', () => {
  expect(asked.length).toBeGreaterThan(6500)
  expect(differing.length / asked.length).toBeLessThan(0.01)
})

test('every disagreement is explained, and no agreement', () => {
  expect(differing.filter(word => !reasons.has(word))).toEqual([])
  expect([...reasons.keys()].filter(word => !differing.includes(word))).toEqual([])
})
