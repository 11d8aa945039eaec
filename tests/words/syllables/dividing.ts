import { alignWord } from '../../../src/words/alignment/graphemes.js'
import { openLexicon } from '../../../src/words/lexicon/lexicon.js'
import { lexiconEvidence } from '../../../src/words/patterns/lexicon-evidence.js'
import { type Division, divisionOf } from '../../../src/words/syllables/divide.js'

export const lexicon = openLexicon()
const others = lexiconEvidence(lexicon)

/** A lexicon word divided with all evidence, as `study` does it. */
export function divisionOfWord(
  text: string,
  pronunciation = lexicon.lookUp(text)?.pronunciations[0],
): Division {
  if (pronunciation === undefined) throw new Error(`"${text}" has no pronunciation in the lexicon`)
  return divisionOf({ text, graphemes: alignWord(text, pronunciation).graphemes, pronunciation, others })
}

export function divided(text: string): string {
  return divisionOfWord(text).syllables.join('·')
}

/** The most familiar words that may be offered to children. */
export function familiarWords(count: number): readonly { word: string; pronunciation: string }[] {
  const found: { word: string; pronunciation: string }[] = []
  for (const { word, pronunciations, name, unfit } of lexicon.entries()) {
    const [pronunciation] = pronunciations
    if (name || unfit || pronunciation === undefined || !/^[a-z]{2,}$/.test(word)) continue
    found.push({ word, pronunciation })
    if (found.length === count) break
  }
  return found
}
