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
import { inAccent } from './pronunciation/accent.js'
import { derivePronunciation } from './pronunciation/derive.js'
import { heteronyms } from './pronunciation/heteronyms.js'
import { installedGuesser } from './pronunciation/joint-model-file.js'
import { divideSyllables } from './syllables/divide.js'
import { withTeachersFindings } from './teacher-findings.js'
import type { Grapheme, PartOfSpeech, Plural, Word, WordSource } from './word.js'

interface Sounding {
  readonly pronunciations: readonly string[]
  readonly graphemes: readonly Grapheme[]
  readonly source: WordSource
  /** What the grapheme table does not explain. */
  readonly exceptions: readonly string[]
}

/** @param accent the class's, where it is not the lexicon's General American */
export function studyWord(planWord: PlanWord, lexicon: Lexicon, accent?: Accent): Outcome<Word> {
  const { overrides, clue, picture } = planWord
  const text = straighten(planWord.text)
  const entry = lookUp(text, lexicon)
  const sounding = soundingOf(text, planWord, entry, lexicon)
  if (!sounding.ok) return sounding
  const { source, exceptions } = sounding.value
  const { pronunciations, graphemes } = accent ? accented(text, sounding.value, accent) : sounding.value
  const pronunciation = pronunciations[0] ?? ''
  const evidence = lexiconEvidence(lexicon)
  const syllables =
    overrides.syllables ?? divideSyllables({ text, graphemes, pronunciation, others: evidence })
  const partsOfSpeech = (overrides.partsOfSpeech ?? entry?.partsOfSpeech ?? []) as readonly PartOfSpeech[]
  const found = findPatterns({ text, graphemes, syllables, pronunciation, partsOfSpeech, evidence })
  const notes = [...exceptions, ...heteronymNotes(text, entry)]
  const word: Word = {
    text,
    known: entry !== undefined && entry.pronunciations.length > 0,
    source,
    pronunciations,
    graphemes,
    soundCount: graphemes.reduce((count, grapheme) => count + grapheme.sounds.length, 0),
    syllables,
    patterns: withTeachersFindings(text, found, overrides),
    partsOfSpeech,
    plural: pluralFor({ text, planWord, partsOfSpeech, pronunciation, entry, lexicon }),
    ...(notes.length === 0 ? {} : { notes }),
    ...(entry === undefined || entry.glosses.length === 0 ? {} : { clueDrafts: entry.glosses }),
    ...(clue === undefined ? {} : { clue }),
    ...(picture === undefined ? {} : { picture }),
  }
  return { ok: true, value: word, problems: [] }
}

function accented(text: string, { pronunciations, graphemes }: Sounding, accent: Accent) {
  const [first = '', ...others] = pronunciations
  const spoken = inAccent({ graphemes, pronunciation: first }, accent)
  const rest = others.map(
    pronunciation =>
      inAccent({ graphemes: alignWord(text, pronunciation).graphemes, pronunciation }, accent).pronunciation,
  )
  return { graphemes: spoken.graphemes, pronunciations: [...new Set([spoken.pronunciation, ...rest])] }
}

/** One line where the word is said in more than one way, each its own word, so that the teacher can choose. */
function heteronymNotes(text: string, entry: LexiconEntry | undefined): readonly string[] {
  if (entry?.heteronym !== true) return []
  const uses = heteronyms.get(entry.word) ?? []
  const ways = uses.map(({ pronunciation, meaning }) => `${pronunciation} (${meaning})`)
  return [`${text} is said in different ways: ${ways.join(', ')}; taken here: the first`]
}

/** Unicode NFC, the curly and other apostrophes straight, the several hyphens one. */
export function straighten(text: string): string {
  if (/^[a-z'-]*$/i.test(text)) return text
  return text
    .normalize('NFC')
    .replace(/[\u2018\u2019\u02bc\u00b4\u0060\uff07]/g, "'")
    .replace(/[\u2010\u2011\u00ad\ufe63\uff0d]/g, '-')
}

/** As typed, and else without accents (café as cafe). */
function lookUp(text: string, lexicon: Lexicon): LexiconEntry | undefined {
  return lexicon.lookUp(text) ?? lexicon.lookUp(text.normalize('NFD').replace(/\p{Mark}/gu, ''))
}

function soundingOf(
  text: string,
  planWord: PlanWord,
  entry: LexiconEntry | undefined,
  lexicon: Lexicon,
): Outcome<Sounding> {
  const listed = entry?.pronunciations ?? []
  const guess = () => derivePronunciation(text.toLowerCase(), lexicon) ?? installedGuesser.guess(spell(text))
  const pronunciations = listed.length > 0 ? listed : [guess()]
  const source: WordSource = listed.length > 0 ? 'lexicon' : 'guess'
  const division = planWord.overrides.sounds
  if (division !== undefined) return teachersSounding(text, planWord, division, pronunciations)
  const { graphemes, exceptions } = alignWord(text, pronunciations[0]!)
  return { ok: true, value: { pronunciations, graphemes, source, exceptions }, problems: [] }
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
  const guess = installedGuesser.guess({ letters: spelling.letters, breaks })
  const aligned = alignDivision(text, parts, pronunciations) ?? alignDivision(text, parts, [guess])
  if (aligned === undefined) return { ok: false, problems: [divisionProblem(text, planWord, division)] }
  const others = pronunciations.filter(pronunciation => pronunciation !== aligned.pronunciation)
  const value: Sounding = {
    pronunciations: [aligned.pronunciation, ...others],
    graphemes: aligned.graphemes,
    source: 'teacher',
    exceptions: [],
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

interface PluralTask {
  readonly text: string
  readonly planWord: PlanWord
  readonly partsOfSpeech: readonly PartOfSpeech[]
  readonly pronunciation: string
  readonly entry: LexiconEntry | undefined
  readonly lexicon: Lexicon
}

function pluralFor({
  text,
  planWord,
  partsOfSpeech,
  pronunciation,
  entry,
  lexicon,
}: PluralTask): Plural | null {
  const { noPlural, plural } = planWord.overrides
  if (noPlural) return null
  if (plural !== undefined) return { form: plural, rule: 'as the teacher writes it' }
  const isNoun = (word: string) => lexicon.lookUp(word)?.partsOfSpeech.includes('noun') === true
  const properName = entry?.name === true && text !== text.toLowerCase()
  return pluralOf({ text, partsOfSpeech, pronunciation, isNoun, properName })
}
