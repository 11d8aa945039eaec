import type { PartOfSpeech } from '../word.js'

/** What the lexicon holds on one word. */
export interface LexiconEntry {
  /** Lower case. */
  readonly word: string
  /** ARPABET with stress, the one to teach first; empty when no dictionary gives one. */
  readonly pronunciations: readonly string[]
  /** How often it stands in the 51 million words of SUBTLEX-US; 0 when never. */
  readonly familiarity: number
  /** Commonest first. */
  readonly partsOfSpeech: readonly PartOfSpeech[]
  /** Not to be offered to children. */
  readonly unfit: boolean
  /** Fit, and yet no word to offer to a class: hard to read aloud or to explain. */
  readonly notReadAloud: boolean
  /** A name and nothing else. */
  readonly name: boolean
  /** Its pronunciations are different words (wind, tear, close), so that the teacher chooses. */
  readonly heteronym: boolean
}

export interface Lexicon {
  /** Number of words. */
  readonly size: number
  /** Capitals do not matter. */
  lookUp(word: string): LexiconEntry | undefined
  /** All words, the most familiar first. */
  entries(): IterableIterator<LexiconEntry>
}
