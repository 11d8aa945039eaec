import type { CardSet } from '../../sets/card-set.js'
import { countSheets } from '../../sheets/estimate.js'
import { divideSheet, type Grid } from '../../sheets/grid.js'
import type { ItemJob } from './item-jobs.js'
import type { PreparedItem } from './prepare-item.js'

/** Of a strip's height: on lower ones a hand that writes or pushes counters has too little room (our own judgement). */
const LEAST_STRIP_SHARE = 0.8

/**
 * The item with its sheets filled: where the plan leaves their division to the layout, cards are as high as takes no sheet
 * more, so that no band of card stays empty below them and there are fewer cuts, but no higher than they are wide.
 * Undefined where nothing changes. Boards keep their height, which is right for what a child does on them; strips are lower
 * by up to a fifth where that saves a sheet, but not in large print.
 */
export function jobWithFilledSheets(prepared: PreparedItem, { cards }: CardSet): ItemJob | undefined {
  const { job, layout, grid, gridRequest } = prepared
  const { preferred } = gridRequest
  if (layout.kind !== 'pieces' || gridRequest.division.kind !== 'layout') return undefined
  const { copies, order } = job.item
  const count = cards.filter(card => card.copy === 1).length
  const sheetsOn = (on: Grid) => countSheets({ grid: on, cards: count, copies, order })
  const sheets = sheetsOn(grid)
  if (layout.perSheet.columns === 1 || preferred.columns === 1) {
    const isOpen = layout.perSheet.rows > 1 && !prepared.request.type.large
    const most = isOpen ? Math.floor(grid.rows / LEAST_STRIP_SHARE + 1e-9) : 0
    for (let rows = grid.rows + 1; rows <= most; rows++) {
      const closer = divideSheet({ ...gridRequest, preferred: { ...preferred, rows } })
      if (closer.ok && sheetsOn(closer.value) < sheets) return { ...job, perSheet: { columns: 1, rows } }
    }
    return undefined
  }
  for (let rows = 1; rows < grid.rows; rows++) {
    const fuller = divideSheet({ ...gridRequest, preferred: { ...preferred, rows } })
    if (!fuller.ok || fuller.value.pieceSize.heightMm > fuller.value.pieceSize.widthMm) continue
    if (sheetsOn(fuller.value) === sheets) return { ...job, perSheet: { columns: grid.columns, rows } }
  }
  return undefined
}
