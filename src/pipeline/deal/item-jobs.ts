import { closest } from 'fastest-levenshtein'
import { layouts } from '../../../layouts/index.js'
import { failWith, succeed } from '../../outcomes.js'
import type { Plan, PlanGroup, PlanWord, PrintItem } from '../../plan/plan.js'
import { fileSafeName } from '../../plan/values/names.js'
import { errorAt, type Outcome, type Problem, warningAt } from '../../problems.js'
import { shortSetTitles } from './set-titles.js'

/** One item for one group of children, or for the whole class. */
export interface ItemJob {
  readonly item: PrintItem
  readonly group: PlanGroup | null
  /** Unique within the plan: the item's name, and the group's behind it. */
  readonly name: string
  readonly words: readonly PlanWord[]
  /** The fullest first; each the title of this set alone. */
  readonly shortSetTitles: readonly string[]
}

/** Every item for the whole class and then for each of its groups, in plan order. */
export function itemJobs(plan: Plan): {
  readonly jobs: readonly ItemJob[]
  readonly problems: readonly Problem[]
} {
  const problems: Problem[] = []
  const untitled = plan.print.flatMap((item): Omit<ItemJob, 'shortSetTitles'>[] => {
    if (isForWholePlan(item)) return [{ item, group: null, name: item.name, words: plan.words }]
    const groups = plan.groups.filter(group => item.groups === undefined || item.groups.includes(group.name))
    const forClass = item.groups === undefined || item.groups.length === 0
    const wanted: (PlanGroup | null)[] = [...(forClass ? [null] : []), ...groups]
    return wanted.flatMap((group): Omit<ItemJob, 'shortSetTitles'>[] => {
      const words = wordsFor(plan, item, group)
      if (words.length === 0) {
        problems.push(nothingLeft(item, group))
        return []
      }
      const name = group === null ? item.name : `${item.name}-${fileSafeName(group.name).toLowerCase()}`
      return [{ item, group, name, words }]
    })
  })
  const titles = shortSetTitles(plan, untitled)
  return { jobs: untitled.map((job, index) => ({ ...job, shortSetTitles: titles[index]! })), problems }
}

/** Checklists, labels and calibration sheets are printed once, whatever the groups. */
function isForWholePlan(item: PrintItem): boolean {
  return layouts.find(layout => layout.name === item.layout)?.kind === 'sheets'
}

function wordsFor(plan: Plan, item: PrintItem, group: PlanGroup | null): readonly PlanWord[] {
  const words = group === null || group.words.length === 0 ? plan.words : group.words
  if (item.words === undefined) return words
  const byText = new Map(words.map(word => [word.text.toLowerCase(), word]))
  return item.words.flatMap(text => byText.get(text.toLowerCase()) ?? [])
}

function nothingLeft(item: PrintItem, group: PlanGroup | null): Problem {
  return warningAt(
    item.place,
    `"${item.name}" has no words left for the group ${group?.name ?? 'class'}, so nothing is printed for it`,
    'Name words of that group under words, or leave the group out with groups.',
  )
}

/** What a run makes. */
export interface ChosenJobs {
  readonly wanted: readonly ItemJob[]
  /** Not made, but told of on the labels or checklists that are. */
  readonly told: readonly ItemJob[]
}

/**
 * The jobs that `only` names: by the item's name, then for the class and all its groups, or by one job's own name.
 * All of them where `only` is left out.
 */
export function chooseJobs(plan: Plan, only?: readonly string[]): Outcome<ChosenJobs> {
  const { jobs, problems } = itemJobs(plan)
  if (only === undefined) return succeed({ wanted: jobs, told: [] }, problems)
  const folded = (name: string) => name.toLowerCase().replaceAll(/[\s_-]+/g, '-')
  const names = [...new Set(jobs.flatMap(job => [job.item.name, job.name]))]
  const unknown = only.filter(name => !names.some(known => folded(known) === folded(name)))
  if (unknown.length > 0) {
    const errors = unknown.map(name =>
      errorAt(
        { file: plan.file },
        `the plan prints nothing named "${name}"`,
        `Did you mean ${closest(name, names)}? It prints ${names.join(', ')}.`,
      ),
    )
    return failWith([...problems, ...errors])
  }
  const wanted = new Set(only.map(folded))
  const isWanted = (job: ItemJob) => wanted.has(folded(job.item.name)) || wanted.has(folded(job.name))
  const chosen = jobs.filter(isWanted)
  const told = chosen.some(job => isForWholePlan(job.item)) ? jobs.filter(job => !isWanted(job)) : []
  return succeed({ wanted: chosen, told }, problems)
}
