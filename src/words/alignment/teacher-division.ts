/**
 * The teacher's own division of a word into sounds: her letters win, the known sounds are fitted to them. A piece may
 * be silent: one in brackets says nothing because she says so, another where the alignment leaves it without a sound.
 */
import { dividedLetters } from '../../plan/words/sound-division.js'
import type { Grapheme } from '../word.js'
import { type AlignedStretch, align } from './align.js'
import { soundsOf } from './arpabet.js'
import { learnedTable } from './graphemes.js'
import { type Spelling, spell } from './spelling.js'

/** A stretch of the word's letters that she takes as one. */
export interface DividedPart {
  readonly start: number
  readonly end: number
  /** She says that it says nothing. */
  readonly silent: boolean
}

/** @returns undefined when the letters do not add up to the word */
export function readDivision(text: string, division: readonly string[]): readonly DividedPart[] | undefined {
  const { letters } = spell(text)
  const parts: DividedPart[] = []
  let at = 0
  for (const divided of dividedLetters(division) ?? []) {
    const part = spell(divided.letters).letters
    if (part.length === 0 || !letters.startsWith(part, at)) return undefined
    parts.push({ start: at, end: at + part.length, silent: divided.silent })
    at += part.length
  }
  return at === letters.length && at > 0 ? parts : undefined
}

/** How the known sounds lie on her pieces, one grapheme a piece. */
export interface FittedDivision {
  readonly graphemes: readonly Grapheme[]
  /** ARPABET with stress: the sounds of the graphemes. */
  readonly pronunciation: string
  /** Letters that would have to spell what they cannot, because a team is cut: the p of p·h·o·n·e. */
  readonly impossible: readonly Grapheme[]
  /** Pieces that say nothing, and that she put in no brackets: the e of c·a·k·e, an e of r·e·e·d. */
  readonly quiet: readonly Grapheme[]
  /** Pieces in brackets that the dictionary hears. */
  readonly struck: readonly Grapheme[]
}

/**
 * @param pronunciations ARPABET, the one to take first; a later one is taken only where the division fits it better
 */
export function fitDivision(
  text: string,
  parts: readonly DividedPart[],
  pronunciations: readonly string[],
): FittedDivision {
  const ways = new Set(pronunciations.flatMap(listed => [listed, withErApart(listed)]))
  const unexplained = Math.min(...pronunciations.map(listed => unexplainedSounds(text, listed)))
  const fits = [...ways]
    .map(pronunciation => fittedTo(text, parts, pronunciation))
    .map(fitted =>
      // A word that no rule explains has such letters whoever divides it.
      fitted.impossible.length > unexplained ? fitted : { ...fitted, impossible: [] },
    )
  return fits.reduce((best, other) => (isBetter(other, best) ? other : best))
}

/** A consonant that she writes as a piece of its own is heard, where a way of saying the word has it: the t of often. */
function isBetter(one: FittedDivision, other: FittedDivision): boolean {
  const faults = ({ impossible, struck, quiet }: FittedDivision) => [
    impossible.length,
    struck.length,
    quiet.filter(({ letters }) => !/[aeiouy]/i.test(letters)).length,
  ]
  const [ones, others] = [faults(one), faults(other)]
  const differing = ones.findIndex((count, index) => count !== others[index])
  return differing >= 0 && ones[differing]! < others[differing]!
}

/** She may hear a vowel and an r (a-round) where the dictionary writes both as one sound. */
function withErApart(pronunciation: string): string {
  return pronunciation.replace(/\bER([012])\b/g, 'AH$1 R')
}

function fittedTo(text: string, parts: readonly DividedPart[], pronunciation: string): FittedDivision {
  const spelling = spell(text)
  const sounds = soundsOf(pronunciation)
  const breaks = new Set(parts.slice(1).map(part => part.start))
  const task = { letters: spelling.letters, breaks, sounds }
  const bracketed = parts.filter(part => part.silent && parts.some(other => !other.silent))
  const unheard = new Set(bracketed.flatMap(lettersIn))
  const asSaid = align(learnedTable(), { ...task, unheard }).stretches
  // Where the sound of a piece in brackets finds no other letters, it goes with the piece.
  const stretches = asSaid.some(isImpossible) ? align(learnedTable(), task).stretches : asSaid
  const spokenOf = ({ start, end }: DividedPart) =>
    stretches.filter(stretch => stretch.start >= start && stretch.end <= end)
  const graphemes = parts.map(part => graphemeOf(text, spelling, part, soundsAt(spokenOf(part), sounds)))
  const struck = graphemes.filter((grapheme, index) => parts[index]!.silent && grapheme.sounds.length > 0)
  return {
    ...spokenWithout(struck, graphemes, pronunciation),
    impossible: stretches
      .filter(isImpossible)
      .map(stretch => graphemeOf(text, spelling, stretch, soundsAt([stretch], sounds))),
    quiet: graphemes.filter((grapheme, index) => !parts[index]!.silent && grapheme.sounds.length === 0),
    struck,
  }
}

function unexplainedSounds(text: string, pronunciation: string): number {
  const task = { ...spell(text), sounds: soundsOf(pronunciation) }
  return align(learnedTable(), task).stretches.filter(isImpossible).length
}

function lettersIn({ start, end }: DividedPart): readonly number[] {
  return Array.from({ length: end - start }, (_, index) => start + index)
}

function isImpossible({ irregular, from, to }: AlignedStretch): boolean {
  return irregular && to > from
}

function soundsAt(stretches: readonly AlignedStretch[], sounds: readonly string[]): readonly string[] {
  return sounds.slice(stretches[0]!.from, stretches.at(-1)!.to)
}

/** The division with nothing said on the struck pieces. */
function spokenWithout(
  struck: readonly Grapheme[],
  graphemes: readonly Grapheme[],
  pronunciation: string,
): Pick<FittedDivision, 'graphemes' | 'pronunciation'> {
  if (struck.length === 0) return { graphemes, pronunciation }
  const said = pronunciation.split(' ')
  const left = graphemes.flatMap(grapheme => {
    const own = said.splice(0, grapheme.sounds.length)
    return struck.includes(grapheme) ? [] : own
  })
  return {
    graphemes: graphemes.map(grapheme =>
      struck.includes(grapheme) ? { ...grapheme, sounds: [] } : grapheme,
    ),
    pronunciation: left.join(' '),
  }
}

function graphemeOf(
  text: string,
  spelling: Spelling,
  { start: first, end }: Pick<DividedPart, 'start' | 'end'>,
  sounds: readonly string[],
): Grapheme {
  const start = spelling.begins[first]!
  return { letters: text.slice(start, spelling.ends[end - 1]), start, sounds }
}
