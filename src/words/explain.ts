/** Why the analysis says what it says, beyond the reasons that each finding carries. */
import { alignWord } from './alignment/graphemes.js'
import type { Lexicon } from './lexicon/entry.js'
import { findPattern } from './patterns/find-patterns.js'
import { patterns } from './patterns/index.js'
import { lexiconEvidence } from './patterns/lexicon-evidence.js'
import { whyTaken } from './pronunciation/choice.js'
import { derivePronunciation } from './pronunciation/derive.js'
import { divisionOf } from './syllables/divide.js'
import type { Word } from './word.js'

export interface Explanation {
  /** How the pronunciation was chosen. */
  readonly pronunciation: string
  /** The rule of each division; empty for a word of one syllable. */
  readonly syllables: string
  readonly partsOfSpeech: string
  /** `rab closed, bit closed`; empty where no syllable tells its kind. */
  readonly kindsOfSyllables: string
}

/** In plain words. Choice and division were made in the lexicon's own accent, whatever the class's. */
export function explainWord(studied: Word, lexicon: Lexicon): Explanation {
  const word = inLexiconsAccent(studied, lexicon)
  return {
    pronunciation: whyPronunciation(word, lexicon),
    syllables: whySyllables(word, lexicon),
    partsOfSpeech: whyPartsOfSpeech(word),
    kindsOfSyllables: kindsOfSyllables(word),
  }
}

function inLexiconsAccent(word: Word, lexicon: Lexicon): Word {
  const { text, overridden = [] } = word
  const pronunciations = lexicon.lookUp(text)?.pronunciations ?? []
  const [first] = pronunciations
  if (first === undefined || overridden.includes('sounds') || first === word.pronunciations[0]) return word
  return { ...word, pronunciations, graphemes: alignWord(text, first).graphemes }
}

function whyPronunciation({ text, known, overridden, pronunciations }: Word, lexicon: Lexicon): string {
  if (overridden?.includes('sounds')) return 'as you divided it'
  if (known) return whyTaken(text.toLowerCase(), pronunciations)
  const isDerived = derivePronunciation(text.toLowerCase(), lexicon) !== undefined
  return isDerived ? 'a guess, from the words that it is made of' : 'a guess, from its letters'
}

function whySyllables(word: Word, lexicon: Lexicon): string {
  if (word.overridden?.includes('syllables')) return 'as you divided it'
  const { text, graphemes, pronunciations, syllables } = word
  const { rules } = divisionOf({
    text,
    graphemes,
    ...(pronunciations[0] === undefined ? {} : { pronunciation: pronunciations[0] }),
    others: lexiconEvidence(lexicon),
  })
  return rules.map((rule, index) => `${syllables[index]}·${syllables[index + 1]} (${rule})`).join('; ')
}

const kinds = patterns.filter(({ scope }) => scope === 'syllable').map(({ name }) => name)

function kindsOfSyllables(word: Word): string {
  const letters = { ...word, pronunciation: word.pronunciations[0] ?? '' }
  return kinds
    .flatMap(name => findPattern(name, letters))
    .toSorted((a, b) => a.start - b.start)
    .map(({ pattern, letters: syllable }) => `${syllable} ${pattern.replace(/-syllable$/, '')}`)
    .join(', ')
}

function whyPartsOfSpeech({ overridden, partsOfSpeech, partsOfSpeechGuessed }: Word): string {
  if (overridden?.includes('part of speech')) return 'as you gave it'
  if (partsOfSpeechGuessed) return 'a guess, by the ending'
  return partsOfSpeech.length > 1 ? 'the commonest use first' : ''
}
