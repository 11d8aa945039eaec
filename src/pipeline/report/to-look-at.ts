import type { PrintedSheet } from '../../files/printed-plan.js'
import type { Plan } from '../../plan/plan.js'
import type { ImposedItem } from '../impose/impose-plan.js'
import { type BackForReview, backForReview } from './back-for-review.js'

/** What to look at twice, beside the problems. */
export interface LookedAt {
  /** Words that no dictionary has: their sounds, and so their marks, are guesses. */
  readonly guessedWords: readonly string[]
  /** Games that were dealt otherwise than the plan says, by item, in plain sentences. */
  readonly changedGames: readonly { readonly item: string; readonly note: string }[]
  /** Words of earlier weeks that came back. */
  readonly review: readonly BackForReview[]
}

export function toLookAt({
  plan,
  items,
}: {
  readonly plan: Plan
  readonly items: readonly ImposedItem<PrintedSheet>[]
}): LookedAt {
  const words = items.flatMap(({ prepared }) => prepared.request.words)
  const guessed = words.filter(({ source }) => source === 'guess').map(({ text }) => text)
  return {
    guessedWords: [...new Set(guessed)],
    changedGames: items.flatMap(({ prepared, printed, set }) =>
      // Of a game that came with the week the plan says nothing.
      (prepared.job.item.ofWeek ? [] : (set.changes ?? [])).map(note => ({ item: printed.name, note })),
    ),
    review: backForReview(plan),
  }
}
