/** Words that fit a teacher's wish, the most familiar first. */

import type { Lexicon, LexiconEntry } from './lexicon/entry.js'
import { likenessTo, mayBeLike } from './likeness.js'
import { findPattern } from './patterns/find-patterns.js'
import { patternNamed } from './patterns/index.js'
import { lazily, wordsOf } from './tables/installed-tables.js'
import type { Finding, PlaceInWord, Word } from './word.js'

/** Every wish that is given must be met. */
export interface FindQuery {
  /** Names of patterns, of any scope. */
  readonly patterns?: readonly string[]
  /** As spelled; with patterns: the letters that one of them stands on (`a_e` for a silent e). */
  readonly letters?: string
  /** Of the pattern, or of the letters. */
  readonly place?: Exclude<PlaceInWord, 'whole'>
  readonly sounds?: number
  readonly syllables?: number
  /** A studied word; the nearest come first (see likeness.ts). */
  readonly like?: Word
  readonly count: number
}

export interface FoundWord {
  readonly word: Word
  /** What in it met the wish, in plain words; empty where numbers alone were asked for. */
  readonly why: string
}

export interface WordSupply {
  /** Fit for children, no names, the most familiar first. */
  readonly words: Iterable<string>
  readonly study: (word: string) => Word | undefined
  /** ARPABET with stress; lets likeness pass over most words unstudied. */
  readonly pronunciationOf?: (word: string) => string | undefined
}

/** At least once in two and a half million words (SUBTLEX-US): beyond, a child has hardly met the word. */
const leastFamiliarity = 20
/** Likeness needs every candidate looked at before the first can be named. */
const candidatesForLikeness = 4000

export function findWords(query: FindQuery, supply: WordSupply): readonly FoundWord[] {
  return query.like === undefined ? firstThatFit(query, supply) : nearest(query, query.like, supply)
}

/** Of the words that are only called out, those that a child reads in a book; uh, er and nah are no words to study. */
const calledOut = lazily(() => new Set(wordsOf('fitness/called-out')))

/** No count of single words holds them; the most familiar first. */
const contractions = lazily(() => wordsOf('patterns/contractions'))

/** The lexicon's words that may be offered, the most familiar first. */
export function* wordsToOffer(lexicon: Pick<Lexicon, 'entries'>): Generator<string> {
  for (const entry of lexicon.entries()) {
    if (entry.familiarity < leastFamiliarity) return
    if (mayBeOffered(entry)) yield entry.word
  }
}

/** Fit to be read aloud, no name, no fragment (a word without a part of speech), two letters or more, one a vowel. */
function mayBeOffered(entry: LexiconEntry): boolean {
  const { word, pronunciations, partsOfSpeech } = entry
  if (entry.unfit || entry.notReadAloud || entry.name) return false
  if (pronunciations.length === 0 || partsOfSpeech.length === 0) return false
  if (partsOfSpeech.every(part => part === 'interjection') && !calledOut().has(word)) return false
  return /^[a-z]{2,}$/.test(word) && /[aeiouy]/.test(word)
}

function firstThatFit(query: FindQuery, { words, study }: WordSupply): readonly FoundWord[] {
  const found: FoundWord[] = []
  for (const text of query.patterns?.includes('contraction') ? contractions() : words) {
    if (found.length >= query.count) break
    if (!maySpell(text, query)) continue
    const word = study(text)
    const why = word === undefined ? undefined : reasonToFit(word, query)
    if (word !== undefined && why !== undefined) found.push({ word, why })
  }
  return found
}

function nearest(
  query: FindQuery,
  model: Word,
  { words, study, pronunciationOf }: WordSupply,
): readonly FoundWord[] {
  const likeness = likenessTo(model)
  const mayBe = mayBeLike(model)
  const found: (FoundWord & { readonly rank: number })[] = []
  let looked = 0
  for (const text of words) {
    looked += 1
    if (looked > candidatesForLikeness) break
    if (text === model.text.toLowerCase() || !maySpell(text, query)) continue
    const said = pronunciationOf?.(text)
    if (said !== undefined && !mayBe(text, said)) continue
    const word = study(text)
    if (word === undefined || reasonToFit(word, query) === undefined) continue
    const like = likeness(word)
    if (like !== undefined) found.push({ word, why: like.why, rank: like.rank })
  }
  return found
    .toSorted((a, b) => a.rank - b.rank || soundsApart(a.word, model) - soundsApart(b.word, model))
    .slice(0, query.count)
    .map(({ word, why }) => ({ word, why }))
}

function soundsApart(word: Word, model: Word): number {
  return Math.abs(word.soundCount - model.soundCount)
}

/** A quick look at the spelling, before the word is studied. */
function maySpell(text: string, { letters, patterns = [] }: FindQuery): boolean {
  if (patterns.some(name => patternNamed(name)?.spelledWith?.test(text) === false)) return false
  return letters === undefined || letters.split('_').every(part => text.includes(part.toLowerCase()))
}

function reasonToFit(word: Word, query: FindQuery): string | undefined {
  if (query.sounds !== undefined && word.soundCount !== query.sounds) return undefined
  if (query.syllables !== undefined && word.syllables.length !== query.syllables) return undefined
  if (query.patterns !== undefined && query.patterns.length > 0) return reasonOfPatterns(word, query)
  return query.letters === undefined || spellsAt(word.text.toLowerCase(), query) ? '' : undefined
}

function reasonOfPatterns(word: Word, { patterns = [], letters, place }: FindQuery): string | undefined {
  const fits = (finding: Finding): boolean =>
    (letters === undefined || finding.letters.toLowerCase() === letters.toLowerCase()) &&
    (place === undefined || finding.place === place || finding.place === 'whole')
  const reasons = patterns.map(name => findingsIn(word, name).find(fits)?.why)
  return reasons.every(why => why !== undefined) ? reasons.join('; ') : undefined
}

/** Kinds of syllable are no part of a word's own findings. */
function findingsIn(word: Word, name: string): readonly Finding[] {
  const own = word.patterns.filter(finding => finding.pattern === name)
  if (own.length > 0 || !name.endsWith('-syllable')) return own
  return findPattern(name, { ...word, pronunciation: word.pronunciations[0] ?? '' })
}

function spellsAt(text: string, { letters = '', place }: FindQuery): boolean {
  const wanted = letters.toLowerCase()
  if (place === 'beginning') return text.startsWith(wanted)
  if (place === 'end') return text.endsWith(wanted)
  return (place === 'middle' ? text.slice(1, -1) : text).includes(wanted)
}
