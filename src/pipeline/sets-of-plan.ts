import type { PlanSet } from '../../layouts/layout.js'
import { itemJobs } from './item-jobs.js'
import { type PreparedItem, prepareItem } from './prepare-item.js'

/**
 * Every set of loose pieces that the plan prints, dealt but not drawn, for the lists and labels of `asking`; where it
 * names groups, theirs alone. A set that cannot be made is left out here: making it tells why.
 */
export function setsOfPlan({ studied, job: asking }: PreparedItem): readonly PlanSet[] {
  const { groups } = asking.item
  return itemJobs(studied.plan).jobs.flatMap((job): PlanSet[] => {
    if (groups !== undefined && !(job.group === null ? groups.length === 0 : groups.includes(job.group.name)))
      return []
    const prepared = prepareItem(studied, job)
    if (!prepared.ok || prepared.value.layout.kind !== 'pieces') return []
    const { layout, request } = prepared.value
    const set = layout.set(request)
    if (!set.ok) return []
    const { setTitle: shortSetTitle, subtitle, words } = request
    return [{ name: job.item.name, shortSetTitle, subtitle, copies: job.item.copies, words, set: set.value }]
  })
}
