import { pluralOf } from '../../src/words/endings/plural.js'
import { openLexicon } from '../../src/words/lexicon/lexicon.js'
import type { Plural } from '../../src/words/word.js'

export interface FamiliarNoun {
  readonly word: string
  readonly plural: Plural
}

/** The most familiar words that are nouns first, with our plural. */
export function familiarNouns(count: number): readonly FamiliarNoun[] {
  const lexicon = openLexicon()
  const found: FamiliarNoun[] = []
  for (const { word, name, unfit, partsOfSpeech, pronunciations } of lexicon.entries()) {
    const [pronunciation] = pronunciations
    if (name || unfit || partsOfSpeech[0] !== 'noun' || pronunciation === undefined || word.length < 2)
      continue
    const plural = pluralOf({ text: word, partsOfSpeech, pronunciation, lookUp: lexicon.lookUp })
    if (plural) found.push({ word, plural })
    if (found.length === count) break
  }
  return found
}

export function isCounted({ plural }: FamiliarNoun): boolean {
  return plural.rule !== 'not counted: stays the same'
}

/** @param wordsByReason the words of each reason, parted by spaces */
export function reasonsByWord(wordsByReason: Readonly<Record<string, string>>): ReadonlyMap<string, string> {
  return new Map(
    Object.entries(wordsByReason).flatMap(([reason, words]) =>
      words.split(/\s+/).map(word => [word, reason] as const),
    ),
  )
}
