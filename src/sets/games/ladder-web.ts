/** All words that a ladder may step on, and which lead to which: a web, of which a ladder is one way. */
import { type ChangeGraph, changeGraph } from './change-graph.js'
import { isOneSoundChanged, type LadderWord, soundsOf } from './ladder-words.js'

/** More changes than this, and nobody remembers where the ladder began: our own judgement, no source. */
export const MOST_STEPS = 8

export interface LadderWeb {
  readonly words: readonly LadderWord[]
  readonly graph: ChangeGraph
}

/** A word of one sound could become any other word of one sound. */
export const LEAST_PIECES = 2

/** Of words that sound the same the first is taken: nobody could hear a step from one to the other. */
export function ladderWeb(words: readonly LadderWord[]): LadderWeb {
  const bySound = new Map<string, LadderWord>()
  for (const word of words) {
    const sounds = soundsOf(word)
    if (word.pieces.length >= LEAST_PIECES && !bySound.has(sounds)) bySound.set(sounds, word)
  }
  const kept = [...bySound.values()]
  const rows = kept.map(({ pieces }) => pieces.map(({ sounds }) => sounds))
  return { words: kept, graph: changeGraph(rows, isOneSoundChanged) }
}

/** Heard five times in a million words (SUBTLEX-US): a word that a child knows. The bound is our own. */
export const FAMILIAR = 255
/** Heard sixty times: nothing is gained beyond. */
const VERY_FAMILIAR = 3000

/** The dearer the less a word suits: those of the list are cheapest, then familiar ones of which a clue can tell. */
export function ladderCost({ isOnList, familiarity, clue }: LadderWord): number {
  if (isOnList) return 0.5
  const rare = Math.max(0, Math.log2(VERY_FAMILIAR / familiarity))
  return 1 + 0.4 * rare + (clue === undefined ? 1.5 : 0)
}
