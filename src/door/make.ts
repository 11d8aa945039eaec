import type { Format } from '../files/folder/item-paths.js'
import { succeed } from '../outcomes.js'
import { type KeptWork, workOfOneRun } from '../pipeline/kept-work.js'
import type { Progress, Watching } from '../pipeline/progress.js'
import { reportItem } from '../pipeline/report/item-report.js'
import { type PlanReport, reportPlan } from '../pipeline/report/plan-report.js'
import { type ProposedGroup, proposedGroups } from '../pipeline/report/proposed-groups.js'
import { type MadePlan, makePlan, putEachOnSheets } from '../pipeline.js'
import type { FileAccess } from '../plan/disk/file-access.js'
import type { Outcome } from '../problems.js'

export interface Making {
  /** Path of the plan file. */
  readonly plan: string
  /** Folder in which the plan's own folder is made; `out` where left out. */
  readonly out?: string
  /** SVG and PNG where left out. */
  readonly formats?: readonly Format[]
  /** Pixels an inch of PNG sheets; 300 where left out. */
  readonly dpi?: number
  /** Items to make, by name; the others of the last set stay as they are. */
  readonly only?: readonly string[]
  /** Instead of the plan's own. */
  readonly seed?: number
  /** How many files may be under way at once; the bytes do not depend on it. */
  readonly jobs?: number
  /** How the plan and what it names are read; the machine's own files where left out. */
  readonly files?: FileAccess
  /** Told how far the run is; `signal` stops it, the last set being as it was: the promise is then rejected. */
  readonly watching?: Watching
  /** From `keepWork()`, for a program that makes the same plan again. */
  readonly kept?: KeptWork
}

/** Makes a plan's sheets as `oaktag make` does: all of them or, where there is an error, none. */
export function make({
  plan,
  out = 'out',
  formats = ['svg', 'png'],
  dpi = 300,
  kept = workOfOneRun(),
  ...rest
}: Making): Promise<Outcome<MadePlan>> {
  return makePlan({ planFile: plan, outFolder: out, formats, dpi, kept, ...rest })
}

/** What a plan would take (pages, sheets of card, pieces, cuts) and how to save some, as `oaktag check` tells it. */
export async function check({
  plan,
  files,
  kept = workOfOneRun(),
}: Pick<Making, 'plan' | 'files' | 'kept'>): Promise<Outcome<PlanReport>> {
  const request = { planFile: plan, kept, ...(files === undefined ? {} : { files }) }
  const reported = await putEachOnSheets(request, item => reportItem(item, kept))
  if (!reported.ok) return reported
  const { plan: read, items } = reported.value
  const proposed = await proposedGroups(read)
  const groups = proposed.ok && proposed.value.length > 0 ? { proposed: proposed.value } : {}
  return succeed({ ...reportPlan(plan, read, items), ...groups }, [
    ...reported.problems,
    ...proposed.problems,
  ])
}

export type { BackForReview } from '../pipeline/report/back-for-review.js'
export type { ItemReport } from '../pipeline/report/item-report.js'
export type { Format, MadePlan, PlanReport, Progress, ProposedGroup, Watching }
