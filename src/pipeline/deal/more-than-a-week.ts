import { errorAt, type Problem } from '../../problems.js'
import type { ItemJob } from './item-jobs.js'

/** Counted with those for each group. */
const mostItems = 500
/** Words on pieces, each copy counted: a box of card stock has a tenth of the sheets. */
const mostWords = 60_000

/** A plan that would fill rooms with paper, and this machine long before: told before any card is dealt. */
export function moreThanAWeek(jobs: readonly ItemJob[]): readonly Problem[] {
  if (jobs.length > mostItems) {
    const message = `the plan asks for ${said(jobs.length)} things to print, those for each group counted`
    return [
      errorAt(jobs[0]!.item.place, message, `Up to ${said(mostItems)} are made at once: divide the plan.`),
    ]
  }
  let words = 0
  for (const job of jobs) {
    words += wordsPrinted(job)
    if (words <= mostWords) continue
    const message = `"${job.name}" brings the plan to ${said(words)} words on pieces, each copy counted`
    const advice = `Up to ${said(mostWords)} are made at once: print fewer copies, or divide the plan.`
    return [errorAt(job.item.place, message, advice)]
  }
  return []
}

/** A word is on one card, or on many boards. */
function wordsPrinted({ words, item }: ItemJob): number {
  const { boards = 1 } = item.options
  const onBoards = typeof boards === 'number' ? boards : 1
  return onBoards > 1 ? onBoards * item.copies * 25 : words.length * item.copies
}

function said(count: number): string {
  return count.toLocaleString('en-US')
}
