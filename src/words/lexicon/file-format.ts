/**
 * The compiled lexicon: one file, of which a lookup reads what it needs: the index once, then the block that holds the word.
 *
 * Little-endian. Header: the mark, then as 32-bit numbers the count of words n and where each section begins, and the last ends.
 * Sections: `firstEnds` (for each block, where its first word ends in `firsts`), `firsts` (those words), `blockEnds` (where
 * each block ends in `blocks`), `blocks`, `order` (n numbers, indices by familiarity).
 * A block: `wordsABlock` words sorted by bytes, the last block what is left; where each begins in the block (16 bits each), then
 * for each its length, the word (ASCII), its familiarity (32 bits) and its record.
 * A record: flags, then two lists, each a count and its entries: parts of speech (a byte each) and pronunciations
 * (length and a byte a sound).
 */
import { consonants, vowels } from '../alignment/arpabet.js'
import type { PartOfSpeech } from '../word.js'

export const fileMark = 'OAKTAG LEXICON 3'
export const sections = ['firstEnds', 'firsts', 'blockEnds', 'blocks', 'order'] as const
export type Section = (typeof sections)[number]
export const wordsABlock = 128
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
