import type { PlacedItem } from '../../files/printed-plan.js'
import { present } from '../../outcomes.js'
import { itemTitle } from '../../plan/items/item-title.js'
import { paperAlone } from '../../plan/values/papers.js'
import type { CardSet } from '../../sets/card-set.js'
import { numberSheets } from '../../sheets/print-order.js'
import type { SheetToDraw } from '../../sheets/sheet.js'
import type { PreparedItem } from '../deal/prepare-item.js'
import { weekUse } from './week-use.js'

interface Made {
  readonly sheets: readonly SheetToDraw[]
  readonly notes?: readonly string[]
  readonly fittingNotes?: readonly string[]
}

/** An item as the files stage takes it. */
export function printedItem(
  prepared: PreparedItem,
  { deal, answerData }: CardSet,
  { sheets, notes = [], fittingNotes = [] }: Made,
): PlacedItem {
  const { job, layout, grid, studied } = prepared
  return {
    name: job.name,
    title: itemTitle(job.item),
    layout: layout.name,
    group: job.group?.name ?? null,
    paper: { ...paperAlone(job.item.paper), ...grid.sheetSize },
    sheets: numberSheets(sheets).map(sheet => ({
      ...sheet,
      draw: () => ({ ...sheet.draw(), number: sheet.number }),
    })),
    ...(sheets.some(({ side }) => side === 'back')
      ? { backs: { flip: job.item.flip, fedByHand: studied.plan.printer?.handFed !== undefined } }
      : {}),
    ...present({ week: weekUse(prepared, sheets) }),
    ...(deal === undefined ? {} : { deal }),
    ...(answerData === undefined ? {} : { answerData }),
    notes: [...notes, ...fittingNotes],
    fittingNotes,
  }
}
