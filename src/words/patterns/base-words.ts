/** Finding the word inside a word. */
import type { WordEvidence } from './pattern.js'

/** A spelling that the word may have been made from, and how it changed. */
export interface BaseSpelling {
  readonly base: string
  /** The base as the reader meets it: `happy with its y changed to i`. */
  readonly inWords: string
}

/** Before a suffix: harm·less, fam·ous → fame, sunn·y → sun, happi·ly → happy, dai·ly → day. */
export function spellingsBehind(stem: string): readonly BaseSpelling[] {
  const found: BaseSpelling[] = [
    { base: stem, inWords: stem },
    { base: `${stem}e`, inWords: `${stem}e without its e` },
  ]
  if (/([bdfgklmnprstvz])\1$/.test(stem)) {
    const base = stem.slice(0, -1)
    found.push({ base, inWords: `${base} with its last letter doubled` })
  }
  if (/(?:[^aeiou]|a)i$/.test(stem)) {
    const base = `${stem.slice(0, -1)}y`
    found.push({ base, inWords: `${base} with its y changed to i` })
  }
  return found
}

/** Once in a million words: rarer ones are mostly chance (the morn of morning). SUBTLEX-US has 51 million. */
const leastFamiliarity = 10

/** A word that the lexicon counts and that could be read: two letters or more, one of them a vowel letter. */
export function isFamiliar(letters: string, evidence: WordEvidence): boolean {
  return letters.length >= 2 && /[aeiouy]/.test(letters) && evidence.familiarity(letters) >= leastFamiliarity
}
