/** What is said of a word with overrides, each of them written at a place of its own in a class file. */
import type { OverrideKey, WordOverrides } from '../../../src/plan/plan.js'
import { formatProblem, type Place } from '../../../src/problems.js'
import { openLexicon } from '../../../src/words/lexicon/lexicon.js'
import { studyWord } from '../../../src/words/study.js'

const lexicon = openLexicon()
const place = { file: 'marsh.yaml', line: 2, column: 5 }
const keys: readonly OverrideKey[] = [
  'meant',
  'sounds',
  'syllables',
  'part of speech',
  'plural',
  'not',
  'also',
]
const overridePlaces = Object.fromEntries(
  keys.map((key): [OverrideKey, Place] => [key, { file: `${key}.yaml`, line: 1 }]),
)

/** `plural.yaml:1: error: …`, each with its advice in a second line. */
export function told(text: string, overrides: WordOverrides): readonly string[] {
  return studyWord({ text, place, overrides, overridePlaces }, lexicon).problems.map(formatProblem)
}
