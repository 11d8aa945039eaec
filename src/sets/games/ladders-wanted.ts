import type { Place } from '../../problems.js'
import type { Word } from '../../words/word.js'
import { type LadderWord, listedLadderWord } from './ladder-words.js'

/** Words fit for children that a ladder may step on besides those of the list. */
export interface KnownWords {
  /** Those of so many sounds, as taught, that are at least as familiar, the most familiar first. */
  readonly wordsOf: (sounds: ReadonlySet<number>, leastFamiliarity: number) => readonly LadderWord[]
  readonly wordCalled: (text: string) => LadderWord | undefined
}

/** What a plan asks of word ladders. */
export interface LaddersWanted {
  readonly words: readonly Word[]
  readonly known: KnownWords
  readonly ladders: number | undefined
  readonly steps: number | undefined
  readonly from: string | undefined
  readonly to: string | undefined
  readonly copies: number
  readonly seed: number
  readonly label: string
  readonly place: Place
}

/** The list's words whose sounds are known. */
export function listedWords({ words }: Pick<LaddersWanted, 'words'>): readonly LadderWord[] {
  return words.filter(word => word.source !== 'guess').map(listedLadderWord)
}

/** As the list has it, else as it is known; capitals do not matter. */
export function wordCalled(text: string, wanted: LaddersWanted): LadderWord | undefined {
  const listed = listedWords(wanted).find(({ word }) => word.text.toLowerCase() === text.toLowerCase())
  return listed ?? wanted.known.wordCalled(text)
}
