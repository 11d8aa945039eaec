/** The lexicon's most familiar words with the alignment of their first pronunciation, for counting. */

import { isVowelSound } from '../../src/words/alignment/arpabet.js'
import { alignWord } from '../../src/words/alignment/graphemes.js'
import { openLexicon } from '../../src/words/lexicon/lexicon.js'

export interface AlignedLetters {
  readonly letters: string
  readonly start: number
  readonly end: number
  /** Joined by spaces; empty for silent letters. */
  readonly sound: string
  readonly isVowel: boolean
}

export interface AlignedWord {
  readonly word: string
  readonly pronunciation: string
  readonly letters: readonly AlignedLetters[]
  /** Number of graphemes with a vowel sound. */
  readonly vowels: number
}

/** Names, fragments and words unfit for children are left out. What was aligned for one count serves all. */
export function familiarAlignedWords(count: number): readonly AlignedWord[] {
  while (aligned.length < count) {
    const next = waiting.next()
    if (next.done) break
    aligned.push(next.value)
  }
  return aligned.slice(0, count)
}

const aligned: AlignedWord[] = []
const waiting = alignedWords()

function* alignedWords(): Generator<AlignedWord, void> {
  for (const { word, pronunciations, partsOfSpeech, name, unfit } of openLexicon().entries()) {
    if (name || unfit || partsOfSpeech.length === 0 || pronunciations.length === 0) continue
    if (/^[a-z]{2,}$/.test(word)) yield alignedWord(word, pronunciations[0]!)
  }
}

function alignedWord(word: string, pronunciation: string): AlignedWord {
  const letters = alignWord(word, pronunciation).graphemes.map(grapheme => ({
    letters: grapheme.letters.toLowerCase(),
    start: grapheme.start,
    end: grapheme.start + grapheme.letters.length,
    sound: grapheme.sounds.join(' '),
    isVowel: grapheme.sounds.some(isVowelSound),
  }))
  return { word, pronunciation, letters, vowels: letters.filter(each => each.isVowel).length }
}
