/** The words of earlier weeks that a plan takes up again, for whoever made it. */
import type { Plan, PlanWord } from '../../plan/plan.js'

export interface BackForReview {
  readonly word: string
  readonly weeksAgo: number
  /** The list it was on; empty for one that stands in the plan. */
  readonly from: string
  /** Null for the whole class. */
  readonly group: string | null
}

/** The class's, then those that groups alone take up. */
export function backForReview({ words, groups }: Pick<Plan, 'words' | 'groups'>): readonly BackForReview[] {
  const shared = new Set(words)
  return [
    ...backOf(words, null),
    ...groups.flatMap(group =>
      backOf(
        group.words.filter(word => !shared.has(word)),
        group.name,
      ),
    ),
  ]
}

function backOf(words: readonly PlanWord[], group: string | null): readonly BackForReview[] {
  return words.flatMap(({ text, cameBack }) =>
    cameBack === undefined ? [] : [{ word: text, ...cameBack, group }],
  )
}
