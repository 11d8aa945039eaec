/** By what an item was made, in one short text: so that a later run can tell whether it is older than the plan. */
import { createHash } from 'node:crypto'
import { layouts } from '../../layouts/index.js'
import type { Plan } from '../plan/plan.js'
import { withoutPlaces } from '../problems.js'
import { type ItemJob, itemJobs } from './deal/item-jobs.js'

/** By the item's name, for every item of the plan. */
export function itemFingerprints(plan: Plan): ReadonlyMap<string, string> {
  const { jobs } = itemJobs(plan)
  return new Map(jobs.map(job => [job.name, fingerprint(plan, job, jobs)] as const))
}

function fingerprint(plan: Plan, job: ItemJob, jobs: readonly ItemJob[]): string {
  const { title, className, seed, font, marks, accent, countSounds, cluesFrom, printer, contrast, taught } =
    plan
  // Checklists and labels tell of the other sets.
  const told = layouts.find(layout => layout.name === job.item.layout)?.kind === 'sheets' ? jobs : []
  const from = [
    title,
    className,
    seed,
    font,
    marks,
    accent,
    countSounds,
    cluesFrom,
    printer,
    contrast,
    taught,
    job,
    told,
  ]
  return createHash('sha256').update(JSON.stringify(from, withoutPlaces)).digest('hex').slice(0, 16)
}
