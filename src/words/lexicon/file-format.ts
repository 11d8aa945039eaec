/**
 * The compiled lexicon: one file that is searched where it lies and never parsed as a whole.
 *
 * Little-endian. Header: the mark, then as 32-bit numbers the count of words n and where each section begins.
 * Sections: `wordEnds` (n numbers, where each word ends in `words`), `recordEnds` (n), `familiarity` (n),
 * `order` (n, indices by familiarity), `words` (UTF-8, sorted by bytes), `records`.
 * A record: flags, then two lists, each a count and its entries: parts of speech (a byte each) and pronunciations
 * (length and a byte a sound).
 */
import { consonants, vowels } from '../alignment/arpabet.js'
import type { PartOfSpeech } from '../word.js'

export const fileMark = 'OAKTAG LEXICON 2'
export const sections = ['wordEnds', 'recordEnds', 'familiarity', 'order', 'words', 'records'] as const
export type Section = (typeof sections)[number]
export const headerBytes = fileMark.length + 4 + 4 * (sections.length + 1)

export const flagBits = { unfit: 1, name: 2, heteronym: 4, notReadAloud: 8 } as const

export const partsOfSpeech: readonly PartOfSpeech[] = [
  'noun',
  'verb',
  'adjective',
  'adverb',
  'pronoun',
  'preposition',
  'conjunction',
  'determiner',
  'interjection',
  'number',
]

/** Each sound that a pronunciation may hold, in the order of its byte: vowels with their three stresses. */
export const soundBytes: readonly string[] = [
  ...consonants,
  ...vowels.flatMap(vowel => [`${vowel}0`, `${vowel}1`, `${vowel}2`]),
]
