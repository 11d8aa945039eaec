/** What one must know of a word to make its plural. */
import type { PartOfSpeech } from '../word.js'

interface Listed {
  readonly partsOfSpeech: readonly PartOfSpeech[]
  readonly familiarity: number
}

export interface PluralQuestion {
  readonly text: string
  readonly partsOfSpeech: readonly PartOfSpeech[]
  /** ARPABET; decides whether a final ch is /k/. */
  readonly pronunciation?: string
  /** What the word list has of a lower-case word; decides whether a word in -s is a plural already, and of what. */
  readonly lookUp?: (text: string) => Listed | undefined
  /** A person's or a place's name: y stays (two Marys), a final s is no plural (the Joneses). */
  readonly properName?: boolean
  /** No dictionary says the word: what ends in -ing is then no noun to be counted. */
  readonly guessed?: boolean
}
