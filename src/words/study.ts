/** A plan's word and the lexicon → the word, studied. What the teacher says wins over what we find. */
import { outcomeOf } from '../outcomes.js'
import type { Plan, PlanWord, WordOverrides } from '../plan/plan.js'
import type { Outcome } from '../problems.js'
import { pluralOf } from './endings/plural.js'
import type { Lexicon, LexiconEntry } from './lexicon/entry.js'
import { overrideProblems } from './overrides/override-problems.js'
import { withTeachersFindings } from './overrides/teacher-findings.js'
import { guessPartsOfSpeech } from './parts-of-speech/guess.js'
import { findPatterns } from './patterns/find-patterns.js'
import { lexiconEvidence } from './patterns/lexicon-evidence.js'
import type { StudiedLetters } from './patterns/pattern.js'
import { asMeant, meantProblems, meantUse, usesOf } from './pronunciation/meant.js'
import { draftOf } from './senses/drafts.js'
import { countOf, soundPieces } from './sound-pieces.js'
import { soundingOf } from './sounding.js'
import { shownPiece } from './sounds-in-words.js'
import { divideSyllables } from './syllables/divide.js'
import type { Overridden, PartOfSpeech, Plural, Word, WordSource } from './word.js'

/**
 * What a plan says of all its words: the class's accent where it is not the lexicon's, what it counts as a sound, whether
 * drafts serve as clues.
 */
export type ClassWays = Pick<Plan, 'accent' | 'countSounds' | 'cluesFrom'>

export function studyWord(planWord: PlanWord, lexicon: Lexicon, ways: ClassWays = {}): Outcome<Word> {
  const { accent, countSounds = 'as taught' } = ways
  const { overrides, sentence, picture, cameBack } = planWord
  const text = straighten(planWord.text)
  const listed = lookUp(text, lexicon)
  const entry = asMeant(listed, overrides.meant)
  const asShown = () => piecesToWrite({ text, place: planWord.place, overrides: {} }, lexicon)
  const sounding = soundingOf({ text, planWord, entry, lexicon, accent, asShown })
  if (!sounding.ok) return sounding
  const { pronunciations, graphemes, unaccented, exceptions } = sounding.value
  const pronunciation = pronunciations[0] ?? ''
  const evidence = lexiconEvidence(lexicon)
  const syllables = overrides.syllables ?? divideSyllables({ text, ...unaccented, others: evidence })
  const { partsOfSpeech, isGuess } = partsOfSpeechFor(text, overrides, entry)
  const letters: StudiedLetters = {
    text,
    ...unaccented,
    syllables,
    ...(isGuess ? {} : { partsOfSpeech }),
    evidence,
    ...(accent === undefined ? {} : { accent }),
  }
  const found = findPatterns(letters)
  const divided = overrides.sounds !== undefined
  const pieces = soundPieces({ word: letters, graphemes, divided, counting: countSounds })
  const notes = [
    ...exceptions.map(each => `exception: ${each}`),
    ...heteronymNotes(text, entry, overrides.meant),
  ]
  const overridden = settledBy(overrides)
  const clueDraft = isDraftOfAnother(listed, overrides.meant) ? undefined : draftOf(entry?.word ?? text)
  const usesDraft = planWord.clue === undefined && clueDraft !== undefined && ways.cluesFrom === 'drafts'
  const clue = planWord.clue ?? (usesDraft ? clueDraft : undefined)
  const word: Word = {
    text,
    known: entry !== undefined && entry.pronunciations.length > 0,
    source: sourceOf(sounding.value.source, overridden),
    pronunciations,
    graphemes,
    soundCount: countOf(pieces),
    phonemeCount: graphemes.reduce((count, grapheme) => count + grapheme.sounds.length, 0),
    pieces,
    syllables,
    patterns: withTeachersFindings(text, found, overrides),
    partsOfSpeech,
    plural: pluralFor({ text, planWord, partsOfSpeech, pronunciation, entry, lexicon }),
    ...(isGuess ? { partsOfSpeechGuessed: true as const } : {}),
    ...(overridden.length === 0 ? {} : { overridden }),
    ...(notes.length === 0 ? {} : { notes }),
    ...(clueDraft === undefined ? {} : { clueDraft }),
    ...(clue === undefined ? {} : { clue }),
    ...(usesDraft ? { clueIsDraft: true as const } : {}),
    ...(sentence === undefined ? {} : { sentence }),
    ...(picture === undefined ? {} : { picture }),
    ...(cameBack === undefined ? {} : { backAfterWeeks: cameBack.weeksAgo }),
  }
  return outcomeOf(word, [
    ...sounding.problems,
    ...meantProblems(planWord, listed),
    ...overrideProblems({ planWord, word: letters, found, entry, lexicon }),
  ])
}

/** The word's pieces as a teacher may write them behind `sounds:`. */
function piecesToWrite(planWord: PlanWord, lexicon: Lexicon): string {
  const word = studyWord(planWord, lexicon)
  if (!word.ok) return planWord.text
  return word.value.pieces.map(shownPiece).join(' ')
}

/** What the teacher settled, in the order of the analysis. */
function settledBy(overrides: WordOverrides): readonly Overridden[] {
  const { meant, sounds, syllables, partsOfSpeech, plural, noPlural, notPatterns, alsoPatterns } = overrides
  return [
    ...(meant === undefined ? [] : ['meaning' as const]),
    ...(sounds === undefined ? [] : ['sounds' as const]),
    ...(syllables === undefined ? [] : ['syllables' as const]),
    ...(partsOfSpeech === undefined ? [] : ['part of speech' as const]),
    ...(plural === undefined && noPlural === undefined ? [] : ['plural' as const]),
    ...(notPatterns === undefined && alsoPatterns === undefined ? [] : ['patterns' as const]),
  ]
}

/** Sounds that are guessed stay a guess, whatever else she settled. */
function sourceOf(source: WordSource, overridden: readonly Overridden[]): WordSource {
  return source === 'guess' || overridden.length === 0 ? source : 'teacher'
}

/** One line where the word is said in more than one way, each its own word, so that the teacher can choose. */
function heteronymNotes(
  text: string,
  entry: LexiconEntry | undefined,
  meant: string | undefined,
): readonly string[] {
  const uses = usesOf(entry)
  if (uses.length === 0) return []
  const ways = uses.map(({ pronunciation, meaning }) => `/${pronunciation}/ (${meaning})`)
  const chosen = meantUse(entry, meant)
  const taken = chosen === undefined ? 'the first' : `yours, /${chosen.pronunciation}/`
  return [`${text} is said in different ways: ${ways.join(', ')}; taken here: ${taken}`]
}

/** Drafts are of the word that is commoner in speech to children. */
function isDraftOfAnother(entry: LexiconEntry | undefined, meant: string | undefined): boolean {
  const use = meantUse(entry, meant)
  return use !== undefined && use !== usesOf(entry)[0]
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

function partsOfSpeechFor(
  text: string,
  overrides: WordOverrides,
  entry: LexiconEntry | undefined,
): { readonly partsOfSpeech: readonly PartOfSpeech[]; readonly isGuess: boolean } {
  const settled = overrides.partsOfSpeech as readonly PartOfSpeech[] | undefined
  const listed = settled ?? entry?.partsOfSpeech ?? []
  if (listed.length > 0) return { partsOfSpeech: listed, isGuess: false }
  const partsOfSpeech = guessPartsOfSpeech(text, entry?.name === true)
  return { partsOfSpeech, isGuess: partsOfSpeech.length > 0 }
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
  const properName = entry?.name === true && text !== text.toLowerCase()
  const isKnown = (entry?.pronunciations.length ?? 0) > 0
  const guessed = !isKnown && planWord.overrides.partsOfSpeech === undefined
  return pluralOf({ text, partsOfSpeech, pronunciation, lookUp: lexicon.lookUp, properName, guessed })
}
