import { alignWord } from '../alignment/graphemes.js'
import { corrections, firstPronunciations, heteronyms } from './listed-pronunciations.js'
import { inOneWriting } from './one-writing.js'
import { countAgainst } from './preferences.js'

/**
 * A word's pronunciations with the one to teach first: the tables decide, and where they are silent the preferences.
 * Wavering sounds stand in one writing; what the dictionary itself writes follows.
 *
 * @param listed ARPABET with stress, in the dictionary's order
 */
export function orderPronunciations(word: string, listed: readonly string[]): readonly string[] {
  const corrected = corrections().get(word)
  if (corrected !== undefined) return [corrected]
  const written = (pronunciation: string) => inOneWriting(word, pronunciation)
  const known = listedFirst(word).map(written)
  const rest = [...new Set(listed.map(written))].filter(pronunciation => !known.includes(pronunciation))
  return [...new Set([...known, ...byPreference(word, rest), ...listed])]
}

function listedFirst(word: string): readonly string[] {
  const uses = heteronyms().get(word)
  if (uses !== undefined) return uses.map(use => use.pronunciation)
  const first = firstPronunciations().get(word)
  return first === undefined ? [] : [first]
}

function byPreference(word: string, listed: readonly string[]): readonly string[] {
  if (listed.length < 2) return listed
  return listed
    .map((pronunciation, place) => {
      const { graphemes, exceptions } = alignWord(word, pronunciation)
      const against = countAgainst({ word, sounds: pronunciation.split(' '), graphemes, exceptions })
      return { pronunciation, against, place }
    })
    .sort((a, b) => a.against - b.against || a.place - b.place)
    .map(({ pronunciation }) => pronunciation)
}
