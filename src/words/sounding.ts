/** How a word of a plan sounds, letter by letter: by the lexicon, by the teacher, or by a guess. */
import { andThen, fail, outcomeOf, succeed } from '../outcomes.js'
import type { Accent, PlanWord } from '../plan/plan.js'
import { errorAt, type Outcome, type Place, type Problem } from '../problems.js'
import { alignWord } from './alignment/graphemes.js'
import { spell } from './alignment/spelling.js'
import { type DividedPart, fitDivision, readDivision } from './alignment/teacher-division.js'
import type { Lexicon, LexiconEntry } from './lexicon/entry.js'
import { soundProblems } from './overrides/sound-problems.js'
import { inAccent, type Spoken } from './pronunciation/accent.js'
import { derivePronunciation } from './pronunciation/derive.js'
import { installedGuesser } from './pronunciation/joint-model-file.js'
import type { Grapheme, WordSource } from './word.js'

export interface Sounding {
  /** ARPABET with stress; the first is the one aligned. */
  readonly pronunciations: readonly string[]
  readonly graphemes: readonly Grapheme[]
  /** As in the lexicon's General American: words divide and show their patterns alike in every accent. */
  readonly unaccented: Spoken
  readonly source: WordSource
  /** What the grapheme table does not explain. */
  readonly exceptions: readonly string[]
}

export interface SoundingTask {
  /** Straightened. */
  readonly text: string
  readonly planWord: PlanWord
  readonly entry: LexiconEntry | undefined
  readonly lexicon: Lexicon
  /** The class's, where it is not the lexicon's General American. */
  readonly accent: Accent | undefined
  /** The pieces of the word as it is shown where the teacher says nothing: `c a k (e)`. */
  readonly asShown: () => string
}

/** An error where the teacher's division cannot be right, a warning where it is odd. */
export function soundingOf(task: SoundingTask): Outcome<Sounding> {
  const { text, planWord, accent } = task
  const listed = task.entry?.pronunciations ?? []
  if (planWord.overrides.sounds !== undefined) {
    return andThen(teachersSounding(task, planWord.overrides.sounds), sounding =>
      succeed(accented(text, sounding, accent)),
    )
  }
  const pronunciations = listed.length > 0 ? listed : [guessed(task)]
  const [pronunciation = ''] = pronunciations
  const { graphemes, exceptions } = alignWord(text, pronunciation)
  const source = listed.length > 0 ? 'lexicon' : 'guess'
  const unaccented = { graphemes, pronunciation }
  const sounding: Sounding = { pronunciations, graphemes, unaccented, source, exceptions }
  return succeed(accented(text, sounding, accent))
}

function guessed({ text, lexicon }: SoundingTask): string {
  return derivePronunciation(text.toLowerCase(), lexicon) ?? installedGuesser.guess(spell(text))
}

/** Her division with the known sounds fitted to it, or sounds guessed for her pieces where nobody knows the word. */
function teachersSounding(
  { text, planWord, entry, asShown }: SoundingTask,
  division: readonly string[],
): Outcome<Sounding> {
  const place = planWord.overridePlaces?.sounds ?? planWord.place
  const parts = readDivision(text, division)
  if (parts === undefined) return fail(doesNotAddUp(text, place, division))
  const listed = entry?.pronunciations ?? []
  const isKnown = listed.length > 0
  const fitted = fitDivision(text, parts, isKnown ? listed : [guessedFor(text, parts)])
  const { graphemes, pronunciation } = fitted
  const others = listed.filter(other => other !== pronunciation)
  const sounding: Sounding = {
    pronunciations: [pronunciation, ...others],
    graphemes,
    unaccented: { graphemes, pronunciation },
    source: 'teacher',
    exceptions: [],
  }
  if (!isKnown) return succeed(sounding)
  const ours = alignWord(text, listed[0]!).graphemes
  return outcomeOf(sounding, soundProblems({ text, place, division, fitted, ours, asShown }))
}

function guessedFor(text: string, parts: readonly DividedPart[]): string {
  const breaks = new Set(parts.slice(1).map(part => part.start))
  return installedGuesser.guess({ letters: spell(text).letters, breaks })
}

function accented(text: string, sounding: Sounding, accent: Accent | undefined): Sounding {
  if (accent === undefined) return sounding
  const spoken = inAccent(sounding.unaccented, accent)
  const rest = sounding.pronunciations
    .slice(1)
    .map(
      pronunciation =>
        inAccent({ graphemes: alignWord(text, pronunciation).graphemes, pronunciation }, accent)
          .pronunciation,
    )
  const pronunciations = [...new Set([spoken.pronunciation, ...rest])]
  return { ...sounding, graphemes: spoken.graphemes, pronunciations }
}

function doesNotAddUp(text: string, place: Place, division: readonly string[]): Problem {
  return errorAt(
    place,
    `the sounds "${division.join(' ')}" do not add up to "${text}"`,
    `Write every letter of "${text}" once, in order, with a space between sounds.`,
  )
}
