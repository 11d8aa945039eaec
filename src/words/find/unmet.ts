/** What a word shows that a class has not met, by the rules of `taught.ts`. */

import type { OfferedFinding, OfferedWord } from './offered-word.js'
import { graphemesKnown, isBlend, isKnown, type Known, opensLetters, stands } from './taught.js'

/**
 * Patterns that are not on the list and whose letters it does not explain either: with ee on it, the team of reed is met.
 * Blends, endings, prefixes and suffixes are more than their letters, and must be met themselves.
 */
export function unmetFindings(word: OfferedWord, known: Known): readonly OfferedFinding[] {
  const isKnownLetters = graphemesKnown(word, known)
  return word.findings.filter(finding => {
    if (!opensLetters(finding) || isKnown(finding, known)) return false
    if (isBlend(finding) || isWordPart(finding)) return true
    return word.graphemes.some(grapheme => stands(grapheme, finding) && !isKnownLetters(grapheme))
  })
}

function isWordPart({ pattern }: OfferedFinding): boolean {
  return /^(?:ending-(?!blend)|prefix$|suffix$)/.test(pattern)
}
