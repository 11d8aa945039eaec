/** What a teacher may wish of a word. Every wish that is given must be met. */
import { patternNamed } from '../patterns/index.js'
import { type Level, levelOf } from './levels.js'
import { goesWithPlan, type PlanLikeness } from './like-plan.js'
import type { OfferedWord } from './offered-word.js'
import { findingsFor, isSpelled, type PlaceWished } from './spelled.js'

export interface Wishes {
  /** Names of patterns, of any scope. */
  readonly patterns?: readonly string[]
  /** As spelled, lower case; with patterns: the letters that one of them stands on (`a_e` for a silent e). */
  readonly letters?: string
  /** Of the pattern, or of the letters. */
  readonly place?: PlaceWished
  readonly sounds?: number
  readonly syllables?: number
  readonly level?: Level
  /** Whether children who have been taught so far can read it (taught.ts). */
  readonly readable?: (word: OfferedWord) => boolean
  /** A plan's words, to which it is to be added. */
  readonly goesWith?: PlanLikeness
}

/** A quick look at the letters. */
function mayShow({ text }: OfferedWord, pattern: string): boolean {
  return patternNamed(pattern)?.spelledWith?.test(text) !== false
}

export function meets(word: OfferedWord, wishes: Wishes): boolean {
  const { patterns = [], letters, sounds, syllables, level, readable, goesWith } = wishes
  if (sounds !== undefined && word.soundCount !== sounds) return false
  if (syllables !== undefined && word.syllableCount !== syllables) return false
  if (level !== undefined && levelOf(word) !== level) return false
  if (!patterns.every(name => mayShow(word, name) && findingsFor(word, name, wishes).length > 0)) return false
  if (patterns.length === 0 && letters !== undefined && !isSpelled(word, letters, wishes.place)) return false
  return (goesWith === undefined || goesWithPlan(word, goesWith)) && (readable?.(word) ?? true)
}
