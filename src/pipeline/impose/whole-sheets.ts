import type { PlanSet } from '../../../layouts/layout.js'
import type { PlacedItem } from '../../files/printed-plan.js'
import { succeed } from '../../outcomes.js'
import { itemTitle } from '../../plan/items/item-title.js'
import type { Outcome } from '../../problems.js'
import { asToDraw } from '../../sheets/sheet.js'
import type { PreparedItem } from '../deal/prepare-item.js'
import type { SettledItem } from '../settle/settle-plan.js'
import { letteringFor } from './item-cover.js'
import { printedItem } from './printed-item.js'

/** The sheets of a layout that is printed once for the whole plan: labels, checklists. */
export function wholeSheets(prepared: PreparedItem, settled: readonly SettledItem[]): Outcome<PlacedItem> {
  const { layout, request, grid } = prepared
  if (layout.kind !== 'sheets') throw new Error(`${layout.name} makes no whole sheets`)
  const lettering = letteringFor(prepared)
  const made = layout.sheets(request, { grid, lettering, sets: setsToldOf(prepared, settled) })
  if (!made.ok) return made
  return succeed(printedItem(prepared, { cards: [] }, { sheets: made.value.map(asToDraw) }), made.problems)
}

/** The sets of loose pieces that the plan prints, as they are settled; where `asking` names groups, theirs alone. */
export function setsToldOf(
  { job: asking }: PreparedItem,
  settled: readonly SettledItem[],
): readonly PlanSet[] {
  const { groups } = asking.item
  return settled.flatMap(({ prepared, set }): readonly PlanSet[] => {
    const { layout, job, request } = prepared
    if (layout.kind !== 'pieces') return []
    if (groups !== undefined && !(job.group === null ? groups.length === 0 : groups.includes(job.group.name)))
      return []
    const { shortSetTitle, words } = request
    const [title, group] = [itemTitle(job.item), job.group?.name ?? null]
    return [{ title, group, shortSetTitle, copies: job.item.copies, words, set }]
  })
}
