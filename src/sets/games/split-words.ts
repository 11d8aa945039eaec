/** One-syllable words in three parts, as three dice spell them: what stands before the vowel, the vowel, what follows. */
import { isVowelSound } from '../../words/alignment/arpabet.js'
import type { Grapheme } from '../../words/word.js'

/** Letters in lower case; the first or the last part may be empty (`a·sk`, `tr·ee`). */
export type ThreeParts = readonly [string, string, string]

/** Undefined for a word with more or fewer vowel sounds than one, of the vowel alone, or with signs that no face shows. */
export function threeParts(graphemes: readonly Grapheme[]): ThreeParts | undefined {
  const vowels = graphemes.filter(({ sounds }) => sounds.some(isVowelSound))
  if (vowels.length !== 1) return undefined
  const at = graphemes.indexOf(vowels[0]!)
  const lettersOf = (part: readonly Grapheme[]) =>
    part
      .map(({ letters }) => letters)
      .join('')
      .toLowerCase()
  const parts = [
    lettersOf(graphemes.slice(0, at)),
    lettersOf([vowels[0]!]),
    lettersOf(graphemes.slice(at + 1)),
  ] as const
  const isWritten = parts[1] !== parts.join('') && /^[a-z]+$/.test(parts.join(''))
  return isWritten ? parts : undefined
}
