import { fillEvenly } from '../text/even-flow.js'

interface PageRoom {
  readonly roomMm: number
  readonly gapMm: number
}

/** A page filled no further than `roomMm`, though it is higher. */
interface FilledPage extends PageRoom {
  readonly pageMm: number
}

/** What deciding the pages of a row takes. */
export interface FlowingRow {
  readonly heightMm: number
  /** Heads of columns: they stand again at the top of every page on which the rows under them go on. */
  readonly heads?: true
  /** Whether it is a row of a table, under its heads. */
  readonly cells?: unknown
  /** It stands under its heads though it is no row of a table: a line to write on. */
  readonly underHeads?: true
  /** It opens what stands below it, so it is never the last of its page. */
  readonly keepsWithNext?: true
}

/** As few pages as the rows need, each filled no further than it must be for that: the last one is no remnant. */
export function evenPages<R extends FlowingRow>(
  rows: readonly R[],
  { roomMm, gapMm }: PageRoom,
): readonly (readonly R[])[] {
  return fillEvenly(roomMm, lowMm => fillPages(rows, { roomMm: lowMm, gapMm, pageMm: roomMm }))
}

function fillPages<R extends FlowingRow>(
  rows: readonly R[],
  { roomMm, gapMm, pageMm }: FilledPage,
): readonly (readonly R[])[] {
  const pages: R[][] = [[]]
  let usedMm = 0
  const add = (row: R) => {
    pages.at(-1)!.push(row)
    usedMm += row.heightMm + gapMm
  }
  let keptUntil = 0
  rows.forEach((row, index) => {
    // Those that are kept with the one before them stand where it does.
    if (index >= keptUntil) {
      const kept = keptTogether(rows, index, { roomMm: pageMm, gapMm })
      keptUntil = kept.until
      if (pages.at(-1)!.length > 0 && usedMm + kept.heightMm > roomMm) {
        pages.push([])
        usedMm = 0
        const heads = headsOver(rows, index)
        // Where no row has room under them, heads would only take the page from it.
        if (heads !== undefined && heads.heightMm + gapMm + row.heightMm <= pageMm) add(heads)
      }
    }
    add(row)
  })
  return pages
}

/** The rows from this one on that may not be parted; where no page is high enough for all, the first two, or the first. */
function keptTogether(rows: readonly FlowingRow[], at: number, { roomMm, gapMm }: PageRoom) {
  let last = at
  while (isKept(rows, last)) last += 1
  const upTo = (end: number) => ({
    until: end + 1,
    heightMm: rows.slice(at, end + 1).reduce((sum, { heightMm }) => sum + heightMm + gapMm, -gapMm),
  })
  const ways = [last, Math.min(at + 1, last), at].map(upTo)
  return ways.find(({ heightMm }) => heightMm <= roomMm) ?? upTo(at)
}

function isKept(rows: readonly FlowingRow[], at: number): boolean {
  const { heads, keepsWithNext } = rows[at]!
  return (heads ?? keepsWithNext) === true && at + 1 < rows.length
}

/** The heads of the table of which this is a row, and not its heads. */
function headsOver<R extends FlowingRow>(rows: readonly R[], at: number): R | undefined {
  const isUnder = (row: R) => row.cells !== undefined || row.underHeads === true
  if (!isUnder(rows[at]!) || rows[at]!.heads === true) return undefined
  const above = rows.slice(0, at).findLast(row => row.heads === true || !isUnder(row))
  return above?.heads === true ? above : undefined
}
