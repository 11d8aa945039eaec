import type { PrintedItem } from '../../files/printed-plan.js'
import { succeed, type WithProblems, withProblems } from '../../outcomes.js'
import type { Outcome, Problem } from '../../problems.js'
import type { CardSet } from '../../sets/card-set.js'
import { placesOf } from '../deal/made-from.js'
import type { PreparedItem } from '../deal/prepare-item.js'
import type { DrawnItem, DrawnPlan } from '../draw/draw-plan.js'
import { byIdentity, type KeptStore } from '../kept-store.js'
import type { SettledItem } from '../settle/settle-plan.js'
import { imposeItem } from './impose-item.js'
import { type PicturePreparing, withPrintablePictures } from './printable-pictures.js'
import { setsToldOf, wholeSheets } from './whole-sheets.js'

/** An item on its sheets, with what `check` tells of it. */
export interface ImposedItem {
  readonly prepared: PreparedItem
  readonly set: CardSet
  readonly printed: PrintedItem
}

export interface Imposing extends PicturePreparing {
  readonly printed: KeptStore<Outcome<PrintedItem>>
}

/** pieces → sheets: puts the pieces and pages of every item on paper, with covers, labels and checklists. */
export async function imposePlan(
  { items, settled }: DrawnPlan,
  imposing: Imposing,
): Promise<WithProblems<readonly ImposedItem[]>> {
  const problems: Problem[] = []
  const imposed: ImposedItem[] = []
  for (const item of items) {
    const { prepared, set } = item.settled
    const outcome = await imposing.printed.onceAsync(madeFrom(item, settled), () =>
      onPaper(item, settled, imposing),
    )
    for (const problem of outcome.problems) problems.push(problem)
    if (outcome.ok) imposed.push({ prepared, set, printed: outcome.value })
  }
  return withProblems(imposed, problems)
}

async function onPaper(
  item: DrawnItem,
  settled: readonly SettledItem[],
  imposing: Imposing,
): Promise<Outcome<PrintedItem>> {
  const { prepared } = item.settled
  const printed =
    prepared.layout.kind === 'sheets' ? wholeSheets(prepared, settled) : succeed(imposeItem(item))
  return printed.ok ? withPrintablePictures(printed, prepared, imposing) : printed
}

function madeFrom({ settled: { prepared, notes, ofWords }, drawn }: DrawnItem, all: readonly SettledItem[]) {
  const { request, grid, job, studied } = prepared
  const told =
    prepared.layout.kind === 'sheets'
      ? setsToldOf(prepared, all).map(({ set, words: _, ...about }) => [byIdentity(set), about])
      : []
  const parts = [
    byIdentity(drawn.fronts),
    byIdentity(drawn.backs),
    byIdentity(drawn.pages),
    byIdentity(request.typeface),
    { ...request, words: request.words.map(word => byIdentity(word)), typeface: null },
    grid,
    job.name,
    job.group?.name,
    job.group?.contrast,
    studied.plan.printer,
    studied.plan.contrast,
    notes,
    ofWords,
    told,
  ]
  return { parts, places: placesOf(prepared) }
}
