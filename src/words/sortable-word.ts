/** As much of a studied word as sorts rest on: what is kept of the words that are studied when oaktag is built. */
import type { Finding, Plural, Word } from './word.js'

export type SortableFinding = Omit<Finding, 'why' | 'source'>

/** Every studied word is one. */
export interface SortableWord
  extends Pick<
    Word,
    'text' | 'graphemes' | 'soundCount' | 'syllables' | 'pronunciations' | 'partsOfSpeech' | 'notes'
  > {
  readonly patterns: readonly SortableFinding[]
  readonly plural: Pick<Plural, 'rule'> | null
  /** The kind of its first syllable, where it is known already: `open-syllable`. */
  readonly firstSyllable?: string
}

const inDifferentWays = 'is said in different ways'

/** tear, read, wind. */
export function isSaidInDifferentWays({ text, notes = [] }: Pick<SortableWord, 'text' | 'notes'>): boolean {
  return notes.some(note => note.startsWith(`${text} ${inDifferentWays}`))
}

/** What is kept of the note. */
export function noteOfDifferentWays(text: string): string {
  return `${text} ${inDifferentWays}`
}
