/** A plan's word and the lexicon → the word, studied. What the teacher says wins over what we find. */
import type { Accent, PlanWord } from '../plan/plan.js'
import { errorAt, type Outcome, type Problem } from '../problems.js'
import { alignWord } from './alignment/graphemes.js'
import { spell } from './alignment/spelling.js'
import { alignDivision, readDivision } from './alignment/teacher-division.js'
import { pluralOf } from './endings/plural.js'
import type { Lexicon, LexiconEntry } from './lexicon/entry.js'
import { findPatterns } from './patterns/find-patterns.js'
import { lexiconEvidence } from './patterns/lexicon-evidence.js'
import { guessPronunciation } from './pronunciation/guess.js'
import { divideSyllables } from './syllables/divide.js'
import type { Grapheme, PartOfSpeech, Plural, Word, WordSource } from './word.js'

interface Sounding {
  readonly pronunciations: readonly string[]
  readonly graphemes: readonly Grapheme[]
  readonly source: WordSource
}

export function studyWord(planWord: PlanWord, lexicon: Lexicon, _accent?: Accent): Outcome<Word> {
  const text = straighten(planWord.text)
  const entry = lookUp(text, lexicon)
  const sounding = soundingOf(text, planWord, entry)
  if (!sounding.ok) return sounding
  const { pronunciations, graphemes, source } = sounding.value
  const pronunciation = pronunciations[0] ?? ''
  const evidence = lexiconEvidence(lexicon)
  const syllables =
    planWord.overrides.syllables ?? divideSyllables({ text, graphemes, pronunciation, others: evidence })
  const partsOfSpeech = (planWord.overrides.partsOfSpeech ??
    entry?.partsOfSpeech ??
    []) as readonly PartOfSpeech[]
  const patterns = findPatterns({ text, graphemes, syllables, pronunciation, partsOfSpeech, evidence })
  const word: Word = {
    text,
    known: entry !== undefined && entry.pronunciations.length > 0,
    source,
    pronunciations,
    graphemes,
    soundCount: graphemes.reduce((count, grapheme) => count + grapheme.sounds.length, 0),
    syllables,
    patterns,
    partsOfSpeech,
    plural: pluralFor(text, planWord, partsOfSpeech, pronunciation),
    ...(planWord.clue === undefined ? {} : { clue: planWord.clue }),
    ...(planWord.picture === undefined ? {} : { picture: planWord.picture }),
  }
  return { ok: true, value: word, problems: [] }
}

/** Unicode NFC, the curly and other apostrophes straight, the several hyphens one. */
export function straighten(text: string): string {
  return text
    .normalize('NFC')
    .replace(/[\u2018\u2019\u02bc\u00b4\u0060\uff07]/g, "'")
    .replace(/[\u2010\u2011\u00ad\ufe63\uff0d]/g, '-')
}

/** As typed, and else without accents (café as cafe). */
function lookUp(text: string, lexicon: Lexicon): LexiconEntry | undefined {
  return lexicon.lookUp(text) ?? lexicon.lookUp(text.normalize('NFD').replace(/\p{Mark}/gu, ''))
}

function soundingOf(text: string, planWord: PlanWord, entry: LexiconEntry | undefined): Outcome<Sounding> {
  const listed = entry?.pronunciations ?? []
  const pronunciations = listed.length > 0 ? listed : [guessPronunciation(spell(text))]
  const source: WordSource = listed.length > 0 ? 'lexicon' : 'guess'
  const division = planWord.overrides.sounds
  if (division !== undefined) return teachersSounding(text, planWord, division, pronunciations)
  const { graphemes } = alignWord(text, pronunciations[0]!)
  return { ok: true, value: { pronunciations, graphemes, source }, problems: [] }
}

function teachersSounding(
  text: string,
  planWord: PlanWord,
  division: readonly string[],
  pronunciations: readonly string[],
): Outcome<Sounding> {
  const parts = readDivision(text, division)
  if (parts === undefined) return { ok: false, problems: [divisionProblem(text, planWord, division)] }
  const spelling = spell(text)
  const breaks = new Set(parts.slice(1).map(part => part.start))
  const guess = guessPronunciation({ letters: spelling.letters, breaks })
  const aligned = alignDivision(text, parts, pronunciations) ?? alignDivision(text, parts, [guess])
  if (aligned === undefined) return { ok: false, problems: [divisionProblem(text, planWord, division)] }
  const others = pronunciations.filter(pronunciation => pronunciation !== aligned.pronunciation)
  const value: Sounding = {
    pronunciations: [aligned.pronunciation, ...others],
    graphemes: aligned.graphemes,
    source: 'teacher',
  }
  return { ok: true, value, problems: [] }
}

function divisionProblem(text: string, planWord: PlanWord, division: readonly string[]): Problem {
  return errorAt(
    planWord.place,
    `The sounds "${division.join(' ')}" do not add up to "${text}"`,
    `Write every letter of "${text}" once, in order, with a space between sounds.`,
  )
}

function pluralFor(
  text: string,
  { overrides }: PlanWord,
  partsOfSpeech: readonly PartOfSpeech[],
  pronunciation: string,
): Plural | null {
  if (overrides.noPlural) return null
  if (overrides.plural !== undefined) return { form: overrides.plural, rule: 'as the teacher writes it' }
  return pluralOf({ text, partsOfSpeech, pronunciation })
}
