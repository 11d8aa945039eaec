/** Sorts by a word's use: its part of speech, how its plural is made. */
import type { BasisFamily } from './sort-basis.js'

export const partOfSpeech: BasisFamily = () => [
  {
    name: 'part of speech',
    basis: 'which part of speech the word most often is',
    sharpness: 0.7,
    titlesFor: word => word.partsOfSpeech.slice(0, 1),
    noneBecause: () => 'has no known part of speech',
  },
]

export const pluralRule: BasisFamily = () => [
  {
    name: 'how the plural is made',
    basis: 'the rule for the plural',
    sharpness: 0.85,
    titlesFor: word => (word.plural === null ? [] : [sortedRule(word.plural.rule)]),
    noneBecause: () => 'has no plural',
  },
]

/** Leaf and knife go into one column: children learn f and fe as one change. */
function sortedRule(rule: string): string {
  return /^fe? to ve?,/.test(rule) ? 'f or fe to ves' : rule
}
