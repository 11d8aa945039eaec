import { fileSafeName } from '../plan/names.js'
import type { Plan, PlanGroup, PlanWord, PrintItem } from '../plan/plan.js'
import { type Problem, warningAt } from '../problems.js'

/** One item for one group of children, or for the whole class. */
export interface ItemJob {
  readonly item: PrintItem
  readonly group: PlanGroup | null
  /** Unique within the plan: the item's name, and the group's behind it. */
  readonly name: string
  readonly words: readonly PlanWord[]
}

/** Every item for the whole class and then for each of its groups, in plan order. */
export function itemJobs(plan: Plan): { readonly jobs: readonly ItemJob[]; readonly problems: readonly Problem[] } {
  const problems: Problem[] = []
  const jobs = plan.print.flatMap(item => {
    const groups = plan.groups.filter(group => item.groups === undefined || item.groups.includes(group.name))
    const forClass = item.groups === undefined || item.groups.length === 0
    const wanted: (PlanGroup | null)[] = [...(forClass ? [null] : []), ...groups]
    return wanted.flatMap((group): ItemJob[] => {
      const words = wordsFor(plan, item, group)
      if (words.length === 0) {
        problems.push(nothingLeft(item, group))
        return []
      }
      const name = group === null ? item.name : `${item.name}-${fileSafeName(group.name).toLowerCase()}`
      return [{ item, group, name, words }]
    })
  })
  return { jobs, problems }
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
