import { fillEvenly } from '../text/even-flow.js'

interface PageRoom {
  readonly roomMm: number
  readonly gapMm: number
}

/** As few pages as the rows need, each filled no further than it must be for that: the last one is no remnant. */
export function evenPages<R extends { readonly heightMm: number }>(
  rows: readonly R[],
  { roomMm, gapMm }: PageRoom,
): readonly (readonly R[])[] {
  return fillEvenly(roomMm, lowMm => fillPages(rows, { roomMm: lowMm, gapMm }))
}

function fillPages<R extends { readonly heightMm: number }>(
  rows: readonly R[],
  { roomMm, gapMm }: PageRoom,
): readonly (readonly R[])[] {
  const pages: R[][] = [[]]
  let usedMm = 0
  for (const row of rows) {
    if (pages.at(-1)!.length > 0 && usedMm + row.heightMm > roomMm) {
      pages.push([])
      usedMm = 0
    }
    pages.at(-1)!.push(row)
    usedMm += row.heightMm + gapMm
  }
  return pages
}
