/** How a word of a plan sounds, letter by letter: by the lexicon, by the teacher, or by a guess. */
import { fail, succeed } from '../outcomes.js'
import type { Accent, PlanWord } from '../plan/plan.js'
import { errorAt, type Outcome, type Problem } from '../problems.js'
import { alignWord } from './alignment/graphemes.js'
import { spell } from './alignment/spelling.js'
import { alignDivision, readDivision } from './alignment/teacher-division.js'
import type { Lexicon, LexiconEntry } from './lexicon/entry.js'
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
}

/** An error where the teacher's division does not add up to the word. */
export function soundingOf(task: SoundingTask): Outcome<Sounding> {
  const { text, planWord, accent } = task
  const listed = task.entry?.pronunciations ?? []
  const pronunciations = listed.length > 0 ? listed : [guessed(task)]
  const division = planWord.overrides.sounds
  if (division !== undefined) {
    const sounding = teachersSounding(text, division, pronunciations)
    if (sounding === undefined) return fail(divisionProblem(text, planWord, division))
    return succeed(accented(text, sounding, accent))
  }
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

function teachersSounding(
  text: string,
  division: readonly string[],
  pronunciations: readonly string[],
): Sounding | undefined {
  const parts = readDivision(text, division)
  if (parts === undefined) return undefined
  const spelling = spell(text)
  const breaks = new Set(parts.slice(1).map(part => part.start))
  const guess = installedGuesser.guess({ letters: spelling.letters, breaks })
  const aligned = alignDivision(text, parts, pronunciations) ?? alignDivision(text, parts, [guess])
  if (aligned === undefined) return undefined
  const others = pronunciations.filter(pronunciation => pronunciation !== aligned.pronunciation)
  return {
    pronunciations: [aligned.pronunciation, ...others],
    graphemes: aligned.graphemes,
    unaccented: aligned,
    source: 'teacher',
    exceptions: [],
  }
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

function divisionProblem(text: string, planWord: PlanWord, division: readonly string[]): Problem {
  return errorAt(
    planWord.place,
    `The sounds "${division.join(' ')}" do not add up to "${text}"`,
    `Write every letter of "${text}" once, in order, with a space between sounds.`,
  )
}
