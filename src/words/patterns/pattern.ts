/** What a pattern is: a named rule over a word's aligned letters, with all that a teacher needs to judge it. */
import type { Accent } from '../../plan/plan.js'
import type { Finding, Grapheme, PartOfSpeech } from '../word.js'

/**
 * `letters`: stands on certain letters and is part of a word's ordinary findings.
 * `word`: says something of the whole word, and is part of its ordinary findings.
 * `syllable`: a kind of syllable, looked for only when it is asked for by name.
 */
export type PatternScope = 'letters' | 'word' | 'syllable'

export interface Pattern {
  readonly name: string
  readonly scope: PatternScope
  /** One line for `oaktag list patterns`. */
  readonly definition: string
  /** When the rule fires, and what it leaves out. */
  readonly condition: string
  readonly example: PatternExample
  /** A word that looks as if it had the pattern, and why it has not. */
  readonly counterExample: CounterExample
  /** A published source, or `common practice, no source`. */
  readonly source: string
  /** No word without such letters (in lower case) can show it: lets a search pass over most words unstudied. */
  readonly spelledWith?: RegExp
  /** Findings from left to right. Pure. */
  readonly find: (word: StudiedLetters) => readonly Finding[]
}

/** What each pattern of a family that shares one rule says of its own. */
export type Teaching = Pick<Pattern, 'definition' | 'condition' | 'example' | 'counterExample'>

export interface CounterExample {
  readonly word: string
  readonly why: string
  /** The letters concerned, where the word has the pattern on other letters. */
  readonly letters?: string
}

export interface PatternExample {
  readonly word: string
  /** The letters found in it, as a finding gives them. */
  readonly letters: string
}

/** A word as the rules see it: aligned, divided, with the evidence of other words where there is any. */
export interface StudiedLetters {
  readonly text: string
  readonly graphemes: readonly Grapheme[]
  /** Joined they give the text, hyphens and apostrophes apart. */
  readonly syllables: readonly string[]
  /** ARPABET with stress, sounds divided by spaces. */
  readonly pronunciation: string
  /** Commonest first. */
  readonly partsOfSpeech?: readonly PartOfSpeech[]
  /** Without it, rules that ask for other words (endings, prefixes, compounds) find nothing. */
  readonly evidence?: WordEvidence
  /** The class's. The sounds are the lexicon's all the same, so that they can be compared with other words'. */
  readonly accent?: Accent
}

/** What the lexicon knows of other words. Words are asked for in lower case. */
export interface WordEvidence {
  /** ARPABET with stress; empty where the word is unknown. */
  readonly pronunciationsOf: (word: string) => readonly string[]
  /** How often it stands in 51 million words (SUBTLEX-US); 0 for names, fragments and what the lexicon lacks. */
  readonly familiarity: (word: string) => number
}

export const commonPractice = 'common practice, no source'
