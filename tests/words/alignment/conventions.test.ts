import { describe, expect, test } from 'vitest'
import { conventions } from '../../../src/words/alignment/conventions.js'
import { alignWord, learnedTable } from '../../../src/words/alignment/graphemes.js'
import { openLexicon } from '../../../src/words/lexicon/lexicon.js'
import { readPronunciations } from '../../../src/words/lexicon/sources.js'
import { aligned } from './written-graphemes.js'

const lexicon = openLexicon()
/** As the dictionary writes them: bargain with IH, where the lexicon has one writing for weak vowels. */
const listed = readPronunciations()

describe('each convention holds in the word that shows it', () => {
  test.each(conventions.map(({ word, graphemes, rule }) => [word, graphemes, rule] as const))(
    '%s is %s: %s',
    (word, graphemes) => {
      expect(aligned(word, lexicon.lookUp(word)!.pronunciations[0]!)).toBe(graphemes)
    },
  )
})

describe('each pairing of the inventory is used in the word that shows it', () => {
  test.each(
    learnedTable().pairings.map(
      ({ letters, sounds, example }) => [letters, sounds.join(' '), example] as const,
    ),
  )('%s as %s in %s', (letters, sounds, example) => {
    const uses = [...lexicon.lookUp(example)!.pronunciations, ...listed.get(example)!]
      .flatMap(pronunciation => alignWord(example, pronunciation).graphemes)
      .map(grapheme => `${grapheme.letters.replace(/['-]/g, '')} ${grapheme.sounds.join(' ')}`)
    expect(uses).toContain(`${letters} ${sounds}`)
  })

  test('none stands twice', () => {
    const names = learnedTable().pairings.map(({ letters, sounds }) => `${letters} ${sounds.join(' ')}`)
    expect(names.filter((name, index) => names.indexOf(name) !== index)).toEqual([])
  })
})
