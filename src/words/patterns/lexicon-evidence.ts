import type { Lexicon, LexiconEntry } from '../lexicon/entry.js'
import type { WordEvidence } from './pattern.js'

/** Each word is looked up once, however many rules ask for it. */
export function lexiconEvidence(lexicon: Pick<Lexicon, 'lookUp'>): WordEvidence {
  const known = new Map<string, LexiconEntry | undefined>()
  const lookUp = (word: string): LexiconEntry | undefined => {
    if (!known.has(word)) known.set(word, lexicon.lookUp(word))
    return known.get(word)
  }
  return {
    pronunciationsOf: word => lookUp(word)?.pronunciations ?? [],
    familiarity: word => {
      const entry = lookUp(word)
      return entry === undefined || entry.name || entry.partsOfSpeech.length === 0 ? 0 : entry.familiarity
    },
  }
}
