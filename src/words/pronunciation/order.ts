import { alignWord } from '../alignment/graphemes.js'
import { addedPronunciations, corrections, firstPronunciations, heteronyms } from './listed-pronunciations.js'
import { inOneWriting, withoutWavering, withWeakVowels } from './one-writing.js'
import { countAgainst } from './preferences.js'

/**
 * A word's pronunciations with the one to teach first: the tables decide, and where they are silent the preferences.
 * Wavering sounds stand in one writing; what the dictionary itself writes follows, weak vowels apart.
 *
 * @param listed ARPABET with stress, in the dictionary's order
 */
export function orderPronunciations(word: string, listed: readonly string[]): readonly string[] {
  const written = (pronunciation: string) => inOneWriting(word, pronunciation)
  const corrected = corrections().get(word) ?? addedPronunciations().get(word)
  if (corrected !== undefined) return [written(corrected)]
  const known = listedFirst(word).map(written)
  const variants = [...new Set(listed.map(pronunciation => withoutWavering(word, pronunciation)))]
  const rest = byPreference(word, variants).map(pronunciation => withWeakVowels(word, pronunciation))
  const taught = [...new Set([...known, ...rest])]
  const told = new Set(taught.map(withoutWeakVowels))
  return [...taught, ...listed.filter(pronunciation => !told.has(withoutWeakVowels(pronunciation)))]
}

/** What differs in weak vowels alone is no other way of saying a word. */
function withoutWeakVowels(pronunciation: string): string {
  return pronunciation.replace(/\b[AI]H0/g, 'AH0')
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
