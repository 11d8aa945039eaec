/** What a list teaches of one pattern, as facts for the teacher: every one is of a rule that fired, or of the pattern's own table. */
import { patternNamed } from '../../words/patterns/index.js'
import { plainName } from '../../words/patterns/plain-name.js'
import type { Finding, Word } from '../../words/word.js'
import { inARow } from '../sorts/in-a-row.js'

/** Words that show the pattern in the same letters, for the same reason. */
export interface LettersShown {
  readonly letters: string
  /** `2 letters, 1 sound`; undefined where a piece of the word reaches beyond the letters. */
  readonly counted?: string
  readonly words: readonly string[]
  /** As `study --why` tells it. */
  readonly why: string
}

export interface PatternLesson {
  readonly pattern: string
  /** `consonant digraph`. */
  readonly title: string
  readonly what: string
  readonly shown: readonly LettersShown[]
  /** How it differs from patterns with which children mix it up. */
  readonly contrasts: readonly string[]
  /** A word that seems to show it and does not. */
  readonly seems: string
}

/** What children mix up with what: the letters look alike, or the sounds are as many. Common practice, no source. */
const mixedUpWith: Readonly<Record<string, readonly string[]>> = {
  'consonant-digraph': ['beginning-blend', 'ending-blend'],
  'beginning-blend': ['consonant-digraph'],
  'ending-blend': ['consonant-digraph'],
  'digraph-blend': ['three-letter-blend', 'trigraph'],
  'three-letter-blend': ['digraph-blend'],
  trigraph: ['digraph-blend', 'three-letter-blend'],
  'silent-letters': ['beginning-blend', 'ending-blend'],
  'double-consonant': ['ending-blend'],
  'vowel-team': ['diphthong'],
  diphthong: ['vowel-team'],
  'silent-e': ['short-vowel'],
  'short-vowel': ['long-vowel'],
  'long-vowel': ['short-vowel'],
  'r-controlled': ['short-vowel'],
  'hard-c': ['soft-c'],
  'soft-c': ['hard-c'],
  'hard-g': ['soft-g'],
  'soft-g': ['hard-g'],
  'open-syllable': ['closed-syllable'],
  'closed-syllable': ['open-syllable'],
}

/** Undefined where no word of the list shows the pattern. */
export function patternLesson(pattern: string, words: readonly Word[]): PatternLesson | undefined {
  const known = patternNamed(pattern)
  const shown = lettersShown(pattern, words)
  if (known === undefined || shown.length === 0) return undefined
  const { counterExample } = known
  return {
    pattern,
    title: plainName(pattern),
    what: known.definition,
    shown,
    contrasts: (mixedUpWith[pattern] ?? [])
      .filter(other => !isBlend(other) || !shown.every(({ letters }) => /^[aeiou]/.test(letters)))
      .flatMap(other => contrastWith(other, words) ?? []),
    seems: `${counterExample.word} (${counterExample.why})`,
  }
}

/** Of consonants, for which nobody takes igh or eau. */
function isBlend(pattern: string): boolean {
  return pattern.endsWith('-blend')
}

/** The letters in the order of the list, the words under the letters that they show first. */
function lettersShown(pattern: string, words: readonly Word[]): readonly LettersShown[] {
  const rows = new Map<string, { letters: string; counted?: string; words: string[]; why: string }>()
  for (const word of words)
    for (const finding of word.patterns.filter(each => each.pattern === pattern)) {
      const letters = finding.letters.toLowerCase()
      const counted = countedIn(word, finding)
      const key = [letters, counted, finding.why].join('|')
      const row = rows.get(key) ?? {
        letters,
        ...(counted === undefined ? {} : { counted }),
        words: [],
        why: finding.why,
      }
      if (!row.words.includes(word.text)) row.words.push(word.text)
      rows.set(key, row)
    }
  return [...rows.values()]
}

/** Of a split pattern, the letters at its two ends: the a and the e of a_e. */
function countedIn({ pieces }: Word, { pattern, letters, start, end }: Finding): string | undefined {
  if (patternNamed(pattern)?.scope !== 'letters') return undefined
  const isSplit = letters.includes('_')
  let at = 0
  let sounds = 0
  for (const piece of pieces) {
    const from = at
    at += piece.letters.length
    const isInside = isSplit ? from === start || at === end : from >= start && at <= end
    if (isInside) sounds += piece.counts
    else if (!isSplit && from < end && at > start) return undefined
  }
  const count = letters.replace('_', '').length
  return `${counting(count, 'letter')}, ${counting(sounds, 'sound')}`
}

export function counting(count: number, what: string): string {
  return count === 1 ? `1 ${what}` : `${count} ${what}s`
}

/** By the first word of the list that shows the other; else by its table's own example. */
function contrastWith(other: string, words: readonly Word[]): string | undefined {
  const [row] = lettersShown(other, words)
  const title = plainName(other)
  if (row !== undefined)
    return `${title}: ${row.letters} in ${inARow(row.words.slice(0, 2))}${row.counted === undefined ? '' : `, ${row.counted}`} (${row.why})`
  const known = patternNamed(other)
  return known === undefined
    ? undefined
    : `${title}: ${known.example.letters} in ${known.example.word} (${known.definition})`
}
