import { layouts } from '../../../layouts/index.js'
import type { ColumnsAndRows } from '../../geometry.js'
import { failWith, succeed } from '../../outcomes.js'
import type { Plan, PlanGroup, PlanWord, PrintItem, TypeSize } from '../../plan/plan.js'
import { fileSafeName } from '../../plan/values/names.js'
import { nearestAdvice } from '../../plan/values/nearest.js'
import { errorAt, type Outcome, type Problem, warningAt } from '../../problems.js'
import { shortSetTitles } from './set-titles.js'

/** Children who play a game together, with their words. */
export interface JobSide {
  /** Null for the whole class. */
  readonly name: string | null
  readonly words: readonly PlanWord[]
}

/** One item for one group of children, or for the whole class. */
export interface ItemJob {
  readonly item: PrintItem
  readonly group: PlanGroup | null
  /** Unique within the plan: the item's name, and the group's behind it. */
  readonly name: string
  readonly words: readonly PlanWord[]
  /** All for whom the item is printed, where they play one game; else none. */
  readonly sides?: readonly JobSide[]
  /** The fullest first; each the title of this set alone. */
  readonly shortSetTitles: readonly string[]
  /** Height of x of the class's own words, where this group's are not to be smaller; known once those are settled. */
  readonly floorXHeightMm?: number
  /** How many pieces stand on a sheet, where that is for the layout to say and its own count would leave a sheet half empty. */
  readonly perSheet?: ColumnsAndRows
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
    // A plan of groups alone has no class of its own to print for.
    const forClass = item.groups?.length === 0 || (item.groups === undefined && plan.words.length > 0)
    const wanted: (PlanGroup | null)[] = [...(forClass ? [null] : []), ...groups]
    const forItem = wanted.flatMap((group): Omit<ItemJob, 'shortSetTitles'>[] => {
      const words = wordsFor(plan, item, group)
      if (words.length === 0) {
        problems.push(nothingLeft(item, group))
        return []
      }
      const name = group === null ? item.name : `${item.name}-${fileSafeName(group.name).toLowerCase()}`
      return [{ item, group, name, words }]
    })
    if (!isOneGame(item)) return forItem
    const sides = forItem.map(({ group, words }): JobSide => ({ name: group?.name ?? null, words }))
    return forItem.map(job => ({ ...job, sides }))
  })
  const titles = shortSetTitles(plan, untitled)
  return { jobs: untitled.map((job, index) => ({ ...job, shortSetTitles: titles[index]! })), problems }
}

/** Checklists, labels and calibration sheets are printed once, whatever the groups. */
function isForWholePlan(item: PrintItem): boolean {
  return layouts.find(layout => layout.name === item.layout)?.kind === 'sheets'
}

function isOneGame(item: PrintItem): boolean {
  return layouts.find(layout => layout.name === item.layout)?.isOneGame(item.options) === true
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
    `"${item.name}" has no words left for ${group === null ? 'the class' : `the group ${group.name}`}, so nothing is printed for it`,
    'Name words of that group under words, or leave the group out with groups.',
  )
}

/** The size asked for a job's words: the item's own wins. */
export function sizeAsked({ item, group }: Pick<ItemJob, 'item' | 'group'>): TypeSize {
  return item.size ?? group?.size ?? { kind: 'normal' }
}

/**
 * The class's own print of what a group with a size of its own gets: of the same item, or else of the first of the same
 * layout. Undefined where there is none, or where the group has the class's size.
 */
export function classOf<J extends Pick<ItemJob, 'item' | 'group'>>(
  job: J,
  jobs: readonly J[],
): J | undefined {
  if (job.group === null || sizeAsked(job).kind === 'normal') return undefined
  const ofClass = jobs.filter(({ group }) => group === null)
  return (
    ofClass.find(({ item }) => item === job.item) ??
    ofClass.find(({ item }) => item.layout === job.item.layout)
  )
}

/** What a run makes. */
export interface ChosenJobs {
  readonly wanted: readonly ItemJob[]
  /** Not made, but told of on the labels or checklists that are, or the measure of a group's words. */
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
        nearestAdvice({ name, known: names, where: `It prints ${names.join(', ')}.` }),
      ),
    )
    return failWith([...problems, ...errors])
  }
  const wanted = new Set(only.map(folded))
  const isWanted = (job: ItemJob) => wanted.has(folded(job.item.name)) || wanted.has(folded(job.name))
  const chosen = jobs.filter(isWanted)
  const others = jobs.filter(job => !isWanted(job))
  // A group's words are measured by the class's own, so these are settled too where only the group's are made.
  const measures = new Set(chosen.map(job => classOf(job, jobs)))
  const told = chosen.some(job => isForWholePlan(job.item)) ? others : others.filter(job => measures.has(job))
  return succeed({ wanted: chosen, told }, problems)
}
