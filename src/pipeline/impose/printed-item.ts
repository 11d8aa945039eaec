import type { PrintedItem } from '../../files/printed-plan.js'
import type { CardSet } from '../../sets/card-set.js'
import { numberSheets } from '../../sheets/print-order.js'
import type { Sheet } from '../../sheets/sheet.js'
import type { PreparedItem } from '../deal/prepare-item.js'

/** An item as the files stage takes it. */
export function printedItem(
  { job, layout, grid }: PreparedItem,
  { deal }: CardSet,
  sheets: readonly Sheet[],
  notes: readonly string[],
): PrintedItem {
  return {
    name: job.name,
    layout: layout.name,
    group: job.group?.name ?? null,
    paper: { name: job.item.paper.name, ...grid.sheetSize },
    sheets: numberSheets(sheets),
    ...(deal === undefined ? {} : { deal }),
    notes,
  }
}
