import type { PlacedItem, PrintedItem, PrintedSheet } from '../../files/printed-plan.js'
import { lazily } from '../../lazily.js'
import { succeed, type WithProblems, withProblems } from '../../outcomes.js'
import type { Outcome, Problem } from '../../problems.js'
import type { CardSet } from '../../sets/card-set.js'
import type { Sheet, SheetToDraw } from '../../sheets/sheet.js'
import { placesOf } from '../deal/made-from.js'
import type { PreparedItem } from '../deal/prepare-item.js'
import { type FaceDrawers, type ItemToDraw, itemToDraw } from '../draw/draw-item.js'
import { byIdentity, type KeptStore } from '../kept-store.js'
import type { SettledItem, SettledPlan } from '../settle/settle-plan.js'
import { imposeItem } from './impose-item.js'
import { type PicturePreparing, withPrintablePictures } from './printable-pictures.js'
import { setsToldOf, wholeSheets } from './whole-sheets.js'

/** An item on its sheets, with what `check` tells of it. */
export interface ImposedItem<S extends PrintedSheet = Sheet> {
  readonly prepared: PreparedItem
  readonly set: CardSet
  readonly printed: PrintedItem<S>
}

export interface Imposing extends PicturePreparing, FaceDrawers {
  readonly printed: KeptStore<Outcome<PlacedItem>>
}

/**
 * sizes → sheets: puts the pieces and pages of every item on paper, with covers, labels and checklists. A sheet is drawn when
 * somebody asks for it, so that whoever writes one after the other holds one at a time.
 */
export async function imposePlan<T>(
  { items: settled }: SettledPlan,
  imposing: Imposing,
  take: (item: ImposedItem<SheetToDraw>) => T | Promise<T>,
): Promise<WithProblems<readonly T[]>> {
  const problems: Problem[] = []
  const taken: T[] = []
  for (const each of settled.filter(item => item.wanted)) {
    const outcome = await placeItem(each, imposing, settled)
    for (const problem of outcome.problems) problems.push(problem)
    const { prepared, set } = each
    if (outcome.ok) taken.push(await take({ prepared, set, printed: outcome.value }))
  }
  return withProblems(taken, problems)
}

/** Whether an item can be put on paper before the others are settled: labels and checklists tell of all of them. */
export function standsAlone({ prepared, wanted }: SettledItem): boolean {
  return wanted && prepared.layout.kind !== 'sheets'
}

/** One item on paper, once for all who ask. */
export function placeItem(
  settled: SettledItem,
  imposing: Imposing,
  all: readonly SettledItem[] = [],
): Promise<Outcome<PlacedItem>> {
  const item = itemToDraw(settled, imposing)
  return imposing.printed.onceAsync(madeFrom(item, all), () => onPaper(item, all, imposing))
}

async function onPaper(
  item: ItemToDraw,
  settled: readonly SettledItem[],
  imposing: Imposing,
): Promise<Outcome<PlacedItem>> {
  const { prepared } = item.settled
  const printed =
    prepared.layout.kind === 'sheets' ? wholeSheets(prepared, settled) : succeed(imposeItem(item))
  if (!printed.ok) return printed
  const placed = await withPrintablePictures(printed, prepared, imposing)
  if (!placed.ok || !imposing.holdsDrawn) return placed
  return { ...placed, value: holdingDrawn(placed.value) }
}

/** Each sheet drawn once, for all who ask and in all runs in which the item comes out as it was. */
function holdingDrawn(item: PlacedItem): PlacedItem {
  return { ...item, sheets: item.sheets.map(sheet => ({ ...sheet, draw: lazily(sheet.draw) })) }
}

function madeFrom(
  { settled: { prepared, notes, ofWords }, drawing }: ItemToDraw,
  all: readonly SettledItem[],
) {
  const { request, grid, job, studied } = prepared
  const told =
    prepared.layout.kind === 'sheets'
      ? setsToldOf(prepared, all).map(({ set, words: _, ...about }) => [byIdentity(set), about])
      : []
  const parts = [
    byIdentity(drawing.fronts),
    byIdentity(drawing.backs),
    byIdentity(drawing.pages),
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
