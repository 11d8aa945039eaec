import type { CardSet } from '../../sets/card-set.js'
import { countSheets } from '../../sheets/estimate.js'
import { divideSheet, type Grid } from '../../sheets/grid.js'
import type { ItemJob } from './item-jobs.js'
import type { PreparedItem } from './prepare-item.js'

/**
 * The item with its sheets filled: where the plan leaves their division to the layout, cards are as high as takes no sheet
 * more, so that no band of card stays empty below them and there are fewer cuts, but no higher than they are wide.
 * Undefined where nothing changes. Strips and boards keep their height, which is right for what a child does on them.
 */
export function jobWithFilledSheets(prepared: PreparedItem, { cards }: CardSet): ItemJob | undefined {
  const { job, layout, grid, gridRequest } = prepared
  const { preferred } = gridRequest
  if (layout.kind !== 'pieces' || layout.perSheet.columns === 1 || preferred.columns === 1) return undefined
  if (gridRequest.division.kind !== 'layout') return undefined
  const { copies, order } = job.item
  const count = cards.filter(card => card.copy === 1).length
  const sheetsOn = (on: Grid) => countSheets({ grid: on, cards: count, copies, order })
  const sheets = sheetsOn(grid)
  for (let rows = 1; rows < grid.rows; rows++) {
    const fuller = divideSheet({ ...gridRequest, preferred: { ...preferred, rows } })
    if (!fuller.ok || fuller.value.pieceSize.heightMm > fuller.value.pieceSize.widthMm) continue
    if (sheetsOn(fuller.value) === sheets) return { ...job, perSheet: { columns: grid.columns, rows } }
  }
  return undefined
}
