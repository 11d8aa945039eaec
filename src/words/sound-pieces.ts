/**
 * The pieces of a word and what each counts. As taught, every piece that is heard counts once: sound boxes have one box
 * for each sound that is heard (Elkonin 1963). That a vowel with its r (ar, er, ire, ure), the long u of cute and a
 * final -le are one piece each, and x and qu two sounds, is common practice, no source. What is shown in pieces is what is
 * counted; a silent piece is shown in brackets.
 *
 * Pieces are the graphemes, but where a vowel and its r are two of them:
 * - an r that closes the syllable of the vowel before it goes with that vowel: f·ire, (h)·our, t·ir·ed, not pi·rate;
 * - a silent e right after such an r goes with it, as the pattern r-controlled marks them: c·are, m·ea·s·ure.
 * No piece crosses an apostrophe: w·e·'r·(e). So with r dropped (accent.ts) as many are counted as with r sounded.
 *
 * Whatever else a grapheme holds, it is one piece and counts once: the o of one (W AH), the zz of pizza (T S), the m of
 * prism (AH M), wh where it is said HH W, 's in fox's (AH Z). Of x and qu only where both sounds are heard: the x of
 * xylophone and the qu of mosquito count once. The same goes for xc, xh, xi (excel, exhaust, anxious) and cqu (acquire).
 */
import type { CountSounds } from '../plan/plan.js'
import type { StudiedLetters } from './patterns/pattern.js'
import { type SpelledSound, spelledSounds } from './patterns/spelled-sounds.js'
import type { Grapheme, SoundPiece } from './word.js'

export interface PieceTask {
  /** The word in the lexicon's accent: pieces are the same in every accent. */
  readonly word: StudiedLetters
  /** In the class's accent: what is heard. */
  readonly graphemes: readonly Grapheme[]
  /** The graphemes are the teacher's own division. */
  readonly divided: boolean
  readonly counting: CountSounds
}

export function soundPieces({ word, graphemes, divided, counting }: PieceTask): readonly SoundPiece[] {
  const runs = divided ? graphemes.map(grapheme => [grapheme]) : runsOf(word, graphemes)
  return runs.map(run => {
    const letters = run.map(grapheme => grapheme.letters).join('')
    const sounds = run.flatMap(grapheme => grapheme.sounds)
    const counts = counting === 'as taught' || divided ? countAsTaught(letters, sounds) : sounds.length
    return { letters, silent: sounds.length === 0, counts }
  })
}

export function countOf(pieces: readonly SoundPiece[]): number {
  return pieces.reduce((sum, { counts }) => sum + counts, 0)
}

/** Letters that are taught as two sounds in one piece. */
const twoInOne = /^(?:x[chi]?|c?qu)$/i

/** What a piece that spells these sounds counts for. */
export function countAsTaught(letters: string, sounds: readonly string[]): number {
  if (sounds.length === 0) return 0
  return sounds.length === 2 && twoInOne.test(letters.replaceAll(/['-]/g, '')) ? 2 : 1
}

function runsOf(word: StudiedLetters, graphemes: readonly Grapheme[]): readonly (readonly Grapheme[])[] {
  const spelled = spelledSounds(word)
  const runs: Grapheme[][] = []
  graphemes.forEach((grapheme, index) => {
    const joins = keepsItsR(spelled, graphemes, index) || keepsItsE(spelled, graphemes, index)
    if (joins) runs.at(-1)!.push(grapheme)
    else runs.push([grapheme])
  })
  return runs
}

/** Vowel sounds that keep to themselves before r in the alignment, so that i_e can be marked (conventions.ts). */
const glides: ReadonlySet<string> = new Set(['AY', 'AW', 'OY'])

/** Whether the r at `index` goes with the vowel before it. A short vowel's r begins the next syllable (very), whatever its letters do. */
function keepsItsR(spelled: readonly SpelledSound[], graphemes: readonly Grapheme[], index: number): boolean {
  const vowel = spelled[index - 1]
  const r = spelled[index]!
  if (
    vowel?.kind !== 'vowel' ||
    !/[aeiouy]/.test(vowel.letters) ||
    r.said !== 'R' ||
    !/^r$/i.test(graphemes[index]!.letters)
  )
    return false
  if (graphemes[index - 1]!.letters.endsWith('-') || r.syllable !== vowel.lastSyllable) return false
  return glides.has(vowel.sounds.at(-1)!) || spelled[index + 1]?.kind !== 'vowel'
}

/** Whether the silent e at `index` goes with the vowel and r before it. */
function keepsItsE(spelled: readonly SpelledSound[], graphemes: readonly Grapheme[], index: number): boolean {
  const before = spelled[index - 1]
  if (before === undefined || spelled[index]!.kind !== 'silent') return false
  if (!/^e$/i.test(graphemes[index]!.letters) || !/r$/i.test(graphemes[index - 1]!.letters)) return false
  return before.kind === 'vowel' || keepsItsR(spelled, graphemes, index - 1)
}
