/** Which words of the lexicon may be offered to a class. */
import { lazily } from '../../lazily.js'
import type { Lexicon, LexiconEntry } from '../lexicon/entry.js'
import { wordsOf } from '../tables/installed-tables.js'

/** At least once in two and a half million words (SUBTLEX-US): beyond, a child has hardly met the word. */
export const leastFamiliarity = 20

/** Of the words that are only called out, those that a child reads in a book; uh, er and nah are no words to study. */
const calledOut = lazily(() => new Set(wordsOf('fitness/called-out')))

/** No count of single words holds them; the most familiar first. */
export const contractions: () => readonly string[] = lazily(() => wordsOf('patterns/contractions'))

/** The lexicon's words that may be offered, the most familiar first. */
export function* wordsToOffer(lexicon: Pick<Lexicon, 'entries'>): Generator<string> {
  for (const entry of lexicon.entries()) {
    if (entry.familiarity < leastFamiliarity) return
    if (mayBeOffered(entry)) yield entry.word
  }
}

/** Fit to be read aloud, no name, no fragment (a word without a part of speech), two letters or more, one a vowel. */
function mayBeOffered(entry: LexiconEntry): boolean {
  const { word, pronunciations, partsOfSpeech } = entry
  if (entry.unfit || entry.notReadAloud || entry.name) return false
  if (pronunciations.length === 0 || partsOfSpeech.length === 0) return false
  if (partsOfSpeech.every(part => part === 'interjection') && !calledOut().has(word)) return false
  return /^[a-z]{2,}$/.test(word) && /[aeiouy]/.test(word)
}
