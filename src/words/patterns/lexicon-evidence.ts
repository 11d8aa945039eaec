import type { Lexicon } from '../lexicon/entry.js'
import type { WordEvidence } from './pattern.js'

const made = new WeakMap<Pick<Lexicon, 'lookUp'>, WordEvidence>()

/** One for each lexicon, which remembers what was asked. */
export function lexiconEvidence(lexicon: Pick<Lexicon, 'lookUp'>): WordEvidence {
  const known = made.get(lexicon)
  if (known !== undefined) return known
  const evidence: WordEvidence = {
    pronunciationsOf: word => lexicon.lookUp(word)?.pronunciations ?? none,
    familiarity: word => {
      const entry = lexicon.lookUp(word)
      return entry === undefined || entry.name || entry.partsOfSpeech.length === 0 ? 0 : entry.familiarity
    },
  }
  made.set(lexicon, evidence)
  return evidence
}

const none: readonly string[] = []
