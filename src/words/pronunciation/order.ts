import { alignWord } from '../alignment/graphemes.js'
import { corrections } from './corrections.js'
import { firstPronunciations, heteronyms } from './heteronyms.js'
import { countAgainst } from './preferences.js'

/**
 * A word's pronunciations with the one to teach first: the tables decide, and where they are silent the preferences.
 *
 * @param listed ARPABET with stress, in the dictionary's order
 */
export function orderPronunciations(word: string, listed: readonly string[]): readonly string[] {
  const corrected = corrections.get(word)
  if (corrected !== undefined) return [corrected]
  const uses = heteronyms.get(word) ?? firstPronunciations.get(word) ?? []
  const known = uses.map(use => use.pronunciation)
  const rest = listed.filter(pronunciation => !known.includes(pronunciation))
  return [...known, ...byPreference(word, rest)]
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
