import type { BackForReview } from '../door/make.js'
import { wrapLine } from './wrap-line.js'

/** `Back for review: rain, wait (last week), chip (3 weeks ago)`, a line for the class and for each group. */
export function describeReview(back: readonly BackForReview[] = []): readonly string[] {
  const groups = [...new Set(back.map(({ group }) => group))]
  return groups.flatMap(name => {
    const of = back.filter(({ group }) => group === name)
    const whom = name === null ? '' : `, ${name}`
    return wrapLine(`Back for review${whom}: ${wordsByWeek(of)}`, 80)
  })
}

export function wordsByWeek(back: readonly Pick<BackForReview, 'word' | 'weeksAgo'>[]): string {
  const weeks = [...new Set(back.map(({ weeksAgo }) => weeksAgo))]
  return weeks
    .map(weeks => {
      const words = back.filter(({ weeksAgo }) => weeksAgo === weeks).map(({ word }) => word)
      return `${words.join(', ')} (${weeks === 1 ? 'last week' : `${weeks} weeks ago`})`
    })
    .join(', ')
}
