/** Everything that is said of what a teacher settled of a word, beyond her sounds: each at the place where she wrote it. */
import type { OverrideKey, PlanWord } from '../../plan/plan.js'
import type { Problem } from '../../problems.js'
import { pluralOf } from '../endings/plural.js'
import type { Lexicon, LexiconEntry } from '../lexicon/entry.js'
import type { StudiedLetters } from '../patterns/pattern.js'
import { divideSyllables } from '../syllables/divide.js'
import type { Finding } from '../word.js'
import { alsoProblems, notProblems } from './pattern-problems.js'
import { pluralProblems } from './plural-problems.js'
import { syllableProblems } from './syllable-problems.js'

export interface OverrideQuestion {
  readonly planWord: PlanWord
  /** The word with her sounds, in the lexicon's accent. */
  readonly word: StudiedLetters
  /** What it shows before she takes away or adds. */
  readonly found: readonly Finding[]
  readonly entry: LexiconEntry | undefined
  readonly lexicon: Lexicon
}

export function overrideProblems(question: OverrideQuestion): readonly Problem[] {
  const { planWord, word, found } = question
  const { notPatterns = [], alsoPatterns = [] } = planWord.overrides
  const { text, graphemes } = word
  return [
    ...aboutSyllables(question),
    ...aboutPlural(question),
    ...notProblems({ word, place: placeOf(planWord, 'not'), found, notPatterns }),
    ...alsoProblems({ text, place: placeOf(planWord, 'also'), graphemes, alsoPatterns }),
  ]
}

function placeOf({ place, overridePlaces = {} }: PlanWord, key: OverrideKey) {
  return overridePlaces[key] ?? place
}

function aboutSyllables({ planWord, word, entry }: OverrideQuestion): readonly Problem[] {
  const { syllables } = planWord.overrides
  if (syllables === undefined) return []
  const { text, graphemes, pronunciation, evidence } = word
  const listed = entry?.pronunciations ?? []
  return syllableProblems({
    text,
    place: placeOf(planWord, 'syllables'),
    syllables,
    ours: divideSyllables({
      text,
      graphemes,
      pronunciation,
      ...(evidence === undefined ? {} : { others: evidence }),
    }),
    graphemes,
    pronunciations: listed,
    known: listed.length > 0,
  })
}

function aboutPlural({ planWord, word, entry, lexicon }: OverrideQuestion): readonly Problem[] {
  const { plural, partsOfSpeech } = planWord.overrides
  const { text, pronunciation } = word
  const ours = pluralOf({ text, partsOfSpeech: ['noun'], pronunciation })
  if (plural === undefined || ours === null) return []
  const listed = partsOfSpeech ?? entry?.partsOfSpeech ?? []
  return pluralProblems({
    text,
    place: placeOf(planWord, 'plural'),
    form: plural,
    ours,
    isNoun: listed.length === 0 ? undefined : listed.includes('noun'),
    isWord: form => (lexicon.lookUp(form)?.partsOfSpeech.length ?? 0) > 0,
  })
}
