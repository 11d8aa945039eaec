/** How slips that are cut apart stand on as few pages as may be. */
import type { Size } from '../../src/geometry.js'
import type { PlacedArt } from '../../src/pieces/piece.js'

export interface Slip extends Size {
  readonly art: readonly PlacedArt[]
}

/** Pages of rows: in the order of the slips, or long ones beside long ones where that saves a page. */
export function slipsOnPages(
  slips: readonly Slip[],
  across: number,
  roomMm: number,
): readonly (readonly SlipRow[])[] {
  const inOrder = evenPages(inRows(slips, across), roomMm)
  const longestFirst = slips.toSorted((a, b) => b.heightMm - a.heightMm)
  const byHeight = byHeightOnPages(inRows(longestFirst, across), roomMm)
  return byHeight.length < inOrder.length ? byHeight : inOrder
}

function inRows(slips: readonly Slip[], across: number): readonly (readonly Slip[])[] {
  return Array.from({ length: Math.ceil(slips.length / across) }, (_, row) =>
    slips.slice(row * across, (row + 1) * across),
  )
}

export interface SlipRow {
  readonly slips: readonly Slip[]
  readonly heightMm: number
}

/** All rows of one height where that takes no more paper; otherwise each as high as its highest slip. */
function evenPages(rows: readonly (readonly Slip[])[], roomMm: number): readonly (readonly SlipRow[])[] {
  const own = rows.map(asHighAsHighest)
  const highestMm = Math.max(0, ...own.map(row => row.heightMm))
  const ragged = rowsOnPages(own, roomMm)
  const even = rowsOnPages(
    own.map(row => ({ ...row, heightMm: highestMm })),
    roomMm,
  )
  return even.length > ragged.length ? ragged : even
}

function asHighAsHighest(slips: readonly Slip[]): SlipRow {
  return { slips, heightMm: Math.max(...slips.map(slip => slip.heightMm)) }
}

/** Long lists beside long ones, each row on the first page with room for it: not in the plan's order, on less paper. */
function byHeightOnPages(
  rows: readonly (readonly Slip[])[],
  roomMm: number,
): readonly (readonly SlipRow[])[] {
  const pages: { readonly rows: SlipRow[]; freeMm: number }[] = []
  for (const row of rows.map(asHighAsHighest)) {
    const page = pages.find(({ freeMm }) => row.heightMm <= freeMm + 1e-6)
    if (page === undefined) pages.push({ rows: [row], freeMm: roomMm - row.heightMm })
    else {
      page.rows.push(row)
      page.freeMm -= row.heightMm
    }
  }
  return pages.map(page => page.rows)
}

function rowsOnPages(rows: readonly SlipRow[], roomMm: number): readonly (readonly SlipRow[])[] {
  const pages: SlipRow[][] = []
  let freeMm = 0
  for (const row of rows) {
    if (row.heightMm > freeMm + 1e-6) {
      pages.push([])
      freeMm = roomMm
    }
    pages.at(-1)!.push(row)
    freeMm -= row.heightMm
  }
  return pages
}
