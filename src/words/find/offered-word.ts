/** A word that `find` may offer, with what it is chosen by: of a studied word what can be kept for all of them. */
import { isVowelSound } from '../alignment/arpabet.js'
import { findPattern } from '../patterns/find-patterns.js'
import { patterns } from '../patterns/index.js'
import {
  isSaidInDifferentWays,
  noteOfDifferentWays,
  type SortableFinding,
  type SortableWord,
} from '../sortable-word.js'
import type { Grapheme, Word } from '../word.js'

/** Where a pattern stands; the reason is told when the word is studied again, for those that are shown. */
export type OfferedFinding = Omit<SortableFinding, 'madeOf' | 'rule'>

export interface OfferedWord {
  readonly text: string
  /** How often it stands in the 51 million words of SUBTLEX-US. */
  readonly familiarity: number
  /** As taught. */
  readonly soundCount: number
  readonly syllableCount: number
  readonly graphemes: readonly Grapheme[]
  /** Index of the grapheme with the last stressed vowel; -1 for a word without a vowel sound. */
  readonly stressed: number
  /** Kinds of syllables too. */
  readonly findings: readonly OfferedFinding[]
  /** What sorts rest on. */
  readonly sortable: SortableWord
}

const syllablePatterns = patterns.filter(({ scope }) => scope === 'syllable').map(({ name }) => name)

export function offeredWord(word: Word, familiarity: number): OfferedWord {
  const letters = { ...word, pronunciation: word.pronunciations[0] ?? '' }
  const findings = [...word.patterns, ...syllablePatterns.flatMap(name => findPattern(name, letters))]
  return {
    text: word.text,
    familiarity,
    soundCount: word.soundCount,
    syllableCount: word.syllables.length,
    graphemes: word.graphemes,
    stressed: stressedGrapheme(word),
    findings: findings.map(({ why: _why, madeOf: _madeOf, rule: _rule, ...where }) => where),
    sortable: sortableOf(word),
  }
}

function sortableOf(word: Word): SortableWord {
  const { text, graphemes, soundCount, syllables, pronunciations, partsOfSpeech, plural } = word
  return {
    text,
    graphemes,
    soundCount,
    syllables,
    pronunciations: pronunciations.slice(0, 1),
    partsOfSpeech: partsOfSpeech.slice(0, 1),
    plural: plural === null ? null : { rule: plural.rule },
    patterns: word.patterns.map(({ why: _why, source: _source, ...where }) => where),
    ...(isSaidInDifferentWays(word) ? { notes: [noteOfDifferentWays(text)] } : {}),
  }
}

function stressedGrapheme({ graphemes, pronunciations }: Word): number {
  const sounds = (pronunciations[0] ?? '').split(' ')
  const stressed = sounds.findLastIndex(sound => /[12]$/.test(sound))
  const from = stressed >= 0 ? stressed : sounds.findLastIndex(sound => /\d$/.test(sound))
  if (from < 0) return -1
  let heard = 0
  return graphemes.findIndex(grapheme => {
    heard += grapheme.sounds.length
    return heard > from && grapheme.sounds.some(isVowelSound)
  })
}
