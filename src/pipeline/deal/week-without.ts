/** What is told of a week's own parts: those that it goes without, and marks that were found for it. */
import { markName } from '../../pieces/marks/mark-problems.js'
import { inWords } from '../../plan/values/in-words.js'
import type { Problem } from '../../problems.js'
import type { ItemJob } from './item-jobs.js'
import type { PreparedItem } from './prepare-item.js'

/** A part that the words are not enough for is left out with a warning, and the rest of the week is made. */
export function weekWithout({ item, name }: ItemJob, problems: readonly Problem[]): readonly Problem[] {
  return problems.map(problem => ({
    ...problem,
    severity: 'warning',
    message: `the week goes without ${name}: ${problem.message}`,
    advice: `${problem.advice} Or leave it out: week: {without: ${item.name}}.`,
  }))
}

/** Of a part that is left out because another one asks all of it. */
export function sameAsked({ name }: ItemJob): string {
  return `The week has no ${name}: it would ask for the same words.`
}

/** One sentence where the plan names no marks. */
export function foundMarksNote([first]: readonly PreparedItem[]): readonly string[] {
  if (first?.studied.plan.week?.findsMarks !== true) return []
  const { marks } = first.studied
  const choose = 'To choose yourself, write marks: in the plan.'
  if (marks.length === 0)
    return [`The plan names no marks, and its words show no pattern often enough to mark it. ${choose}`]
  const named = inWords(marks.map(markName)).replace(/ or (?=[^ ]*$)/, ' and ')
  return [`The plan names no marks: what its words show most often is marked, ${named}. ${choose}`]
}
