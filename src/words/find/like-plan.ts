/** Words that go with a plan: they show what it marks, and are as hard as its own words, which they leave out. */
import type { LetterTarget } from '../../plan/plan.js'
import { digraphsInBlends } from '../patterns/inside-blends.js'
import type { Word } from '../word.js'
import type { OfferedWord } from './offered-word.js'
import { findingsFor, isSpelled } from './spelled.js'

export interface PlanToMatch {
  /** Counted as taught, whatever the class counts: so are those to choose from. */
  readonly words: readonly Pick<Word, 'text' | 'syllables' | 'soundCount'>[]
  readonly marks: readonly LetterTarget[]
  /** How often a word is heard; 0 where the lexicon lacks it. */
  readonly familiarity: (word: string) => number
}

/** What the plan's words show and how hard they are. */
export interface PlanLikeness {
  readonly marks: readonly LetterTarget[]
  readonly isOfItsLevel: (word: OfferedWord) => boolean
}

/** From the least to the most. */
export interface PlanLevel {
  readonly syllables: Range
  readonly sounds: Range
  readonly familiarity: Range
}

type Range = readonly [least: number, most: number]

/**
 * The same level: as many syllables and sounds as the plan's words have, from the fewest to the most; no more familiar
 * than the most familiar of them, and no less than three quarters of them are. (Our own bounds.)
 */
export function likePlan({
  words,
  marks,
  familiarity,
}: PlanToMatch): PlanLikeness & { readonly level: PlanLevel } {
  const own = new Set(words.map(({ text }) => text.toLowerCase()))
  const heard = words.map(({ text }) => familiarity(text)).filter(count => count > 0)
  const sorted = heard.toSorted((a, b) => a - b)
  const level = {
    syllables: rangeOf(words.map(word => word.syllables.length)),
    sounds: rangeOf(words.map(word => word.soundCount)),
    familiarity: [
      sorted[Math.floor(sorted.length / 4)] ?? 0,
      sorted.at(-1) ?? Number.POSITIVE_INFINITY,
    ] as const,
  }
  return { marks, level, isOfItsLevel: word => isOfLevel(word, level) && !own.has(word.text) }
}

export function isOfLevel(word: OfferedWord, { syllables, sounds, familiarity }: PlanLevel): boolean {
  return (
    within(word.familiarity, familiarity) &&
    within(word.syllableCount, syllables) &&
    within(word.soundCount, sounds)
  )
}

/** A plan that marks nothing asks for its level alone. */
export function goesWithPlan(word: OfferedWord, { marks, isOfItsLevel }: PlanLikeness): boolean {
  return isOfItsLevel(word) && (marks.length === 0 || marks.some(target => shows(word, target)))
}

/** Each mark's most familiar words in turn, so that one common pattern does not take all places; then by familiarity. */
export function inTurn(
  words: readonly OfferedWord[],
  marks: readonly LetterTarget[],
  count: number,
): readonly OfferedWord[] {
  const queues = marks.map(target => words.filter(word => shows(word, target)))
  const taken = new Set<OfferedWord>()
  const longest = Math.max(0, ...queues.map(queue => queue.length))
  for (let place = 0; place < longest; place += 1)
    for (const queue of queues) {
      const word = queue[place]
      if (word !== undefined && taken.size < count) taken.add(word)
    }
  return words.filter(word => taken.has(word))
}

/** Whether the word has what the mark stands on. */
export function shows(word: OfferedWord, target: LetterTarget): boolean {
  const { place } = target
  if (target.kind === 'letters') return isSpelled(word, target.letters, place)
  const own = findingsFor(word, target.pattern, { ...(place === undefined ? {} : { place }) })
  if (own.length > 0 || target.insideBlends !== true) return own.length > 0
  const inside = digraphsInBlends({ ...word, patterns: word.findings })
  return inside.some(finding => place === undefined || finding.place === place)
}

function rangeOf(numbers: readonly number[]): Range {
  return [Math.min(...numbers), Math.max(...numbers)]
}

function within(number: number, [least, most]: Range): boolean {
  return number >= least && number <= most
}
