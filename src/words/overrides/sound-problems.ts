/**
 * What is said of a teacher's division into sounds. An error where letters would have to spell what they cannot, a
 * warning where it can be read and is odd. Her own choice to take a rime or a blend as one piece (b·all, bl·a·ck) is
 * not odd: common practice, no source.
 */
import { errorAt, type Place, type Problem, warningAt } from '../../problems.js'
import { isVowelSound } from '../alignment/arpabet.js'
import type { FittedDivision } from '../alignment/teacher-division.js'
import { isDigraph } from '../patterns/digraph-sounds.js'
import type { Grapheme } from '../word.js'

export interface SoundQuestion {
  readonly text: string
  readonly place: Place
  /** As she wrote it. */
  readonly division: readonly string[]
  readonly fitted: FittedDivision
  /** As the tool takes the letters together. */
  readonly ours: readonly Grapheme[]
  /** As `study` shows the word where she says nothing: `c a k (e)`. Asked for only where there is a problem. */
  readonly asShown: () => string
}

export function soundProblems(question: SoundQuestion): readonly Problem[] {
  const { text, place, division, fitted, ours, asShown } = question
  const hers = division.join(' ')
  const together = () => `Keep together what spells one sound: sounds: ${asShown()}.`
  const [impossible] = fitted.impossible
  if (impossible !== undefined) {
    const cut = teamAround(impossible, ours)
    const what =
      cut === undefined ? 'letters that spell one sound' : `"${cut.letters}", which spells one sound`
    return [errorAt(place, `the sounds "${hers}" cut ${what} in "${text}"`, together())]
  }
  return [
    ...fitted.struck.map(({ letters }) =>
      warningAt(
        place,
        `the dictionary hears the "${letters}" that stands in brackets in "${hers}"`,
        'Take the brackets away, or leave it so if your class does not hear it.',
      ),
    ),
    ...teamsCut(fitted, ours).map(({ team, quiet }) =>
      warningAt(
        place,
        `the sounds "${hers}" cut "${team.letters}", which spells one sound in "${text}"; counted as ${fitted.graphemes.map(asPiece).join('·')}`,
        `${together()} Or put what says nothing in brackets: (${quiet.letters}).`,
      ),
    ),
    ...fitted.graphemes
      .filter((_, index) => isMoreThanASound(fitted.graphemes, index))
      .map(({ letters }) =>
        warningAt(
          place,
          `"${letters}" in the sounds "${hers}" is more than a vowel with what follows it, and counts as one sound`,
          `Divide it further: sounds: ${asShown()}; what is said in one go stands under syllables.`,
        ),
      ),
  ]
}

function asPiece({ letters, sounds }: Grapheme): string {
  return sounds.length === 0 ? `(${letters})` : letters
}

function teamAround({ start }: Grapheme, ours: readonly Grapheme[]): Grapheme | undefined {
  return ours.find(
    team => team.letters.length > 1 && team.start <= start && start < team.start + team.letters.length,
  )
}

/** Teams that are taught as one and of which a piece is left without a sound, each with the first such piece. */
function teamsCut(
  { quiet }: FittedDivision,
  ours: readonly Grapheme[],
): readonly { readonly team: Grapheme; readonly quiet: Grapheme }[] {
  return ours.filter(isTaughtAsOne).flatMap(team => {
    const first = quiet.find(piece => teamAround(piece, ours) === team)
    return first === undefined ? [] : [{ team, quiet: first }]
  })
}

/** A vowel team or a digraph; the k of knight and a second b of rabbit are silent in anybody's eyes. */
function isTaughtAsOne({ letters, sounds }: Grapheme): boolean {
  return sounds.some(isVowelSound) || isDigraph(letters.toLowerCase(), sounds.join(' '))
}

/** Two vowel sounds, or a vowel behind consonants; but an ending may be taught whole: tion, ture, ble. */
function isMoreThanASound(pieces: readonly Grapheme[], index: number): boolean {
  const { letters, sounds } = pieces[index]!
  // A letter cannot be divided, even where it says its own name.
  if (letters.length === 1) return false
  const vowels = sounds.filter(isVowelSound).length
  const glides = /^(?:[YW]|HH W)$/.test(sounds.slice(0, sounds.findIndex(isVowelSound)).join(' '))
  if (vowels > 1) return true
  const isEnding = index > 0 && index === pieces.length - 1 && letters.length > 2
  return vowels === 1 && !isVowelSound(sounds[0]!) && !glides && !isEnding
}
