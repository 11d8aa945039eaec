import type { ColumnsAndRows } from '../../geometry.js'
import type { PrintItem } from '../../plan/plan.js'
import type { PreparedItem } from '../deal/prepare-item.js'

/** The item with more room for its words. */
export interface RoomierItem {
  /** What is other of the item. */
  readonly changes: Partial<PrintItem>
  /** The same, as the teacher would write it: `2 across and 3 down`. */
  readonly says: string
  /** Whether the plan leaves it open, so that it may be taken without asking. */
  readonly open: boolean
  /** Whether the set has to be dealt again for it. */
  readonly dealsAnew: boolean
}

/** How much taller for its width a piece may become, where it becomes taller than the paper is. */
const TALLEST = 1.5
/** Further ones differ too little from these to be worth the time. */
const MOST_TRIES = 16

/** Ways to give the words of an item more room: the paper turned, fewer and larger pieces, boards with fewer cells. */
export function roomierItems(prepared: PreparedItem): readonly RoomierItem[] {
  const { job, layout, request, grid, gridRequest } = prepared
  // With its size in the item itself, a group's large print keeps the division that it is given here.
  const size = job.item.size ?? job.group?.size
  const sized: Partial<PrintItem> = size === undefined ? {} : { size }
  const ofGroup = job.item.size === undefined && job.group?.size !== undefined
  const openDivision = ofGroup || gridRequest.division.kind === 'layout'
  const turned = grid.orientation === 'portrait' ? 'landscape' : 'portrait'
  const sameCounts = { kind: 'count', across: grid.columns, down: grid.rows } as const
  const instead = gridRequest.division.kind === 'card' ? ' in place of "card"' : ''
  const openTurn = job.item.orientation === undefined
  const boards = layout.kind === 'pieces' ? (layout.roomier?.(request) ?? []) : []
  // Cards are turned by their counts; a board alone on its sheet turns with the paper.
  const alone = grid.columns * grid.rows === 1 && gridRequest.division.kind !== 'card'
  const turning = { ...sized, orientation: turned, division: sameCounts } as const
  const turnedSays = `orientation: ${turned}`
  return [
    ...(alone ? [{ changes: turning, says: turnedSays, open: openTurn, dealsAnew: false }] : []),
    ...coarserCounts(prepared).map(({ columns, rows }) => ({
      changes: { ...sized, division: { kind: 'count', across: columns, down: rows } as const },
      says: `${columns} across and ${rows} down${instead}`,
      open: openDivision,
      dealsAnew: false,
    })),
    ...boards.flatMap(({ options, says, open }) => {
      const changed = { ...job.item.options, ...options }
      const way = { changes: { ...sized, options: changed }, says, open: open || ofGroup, dealsAnew: true }
      if (!alone) return [way]
      const both = { ...way, changes: { ...turning, options: changed }, says: `${says} and ${turnedSays}` }
      return [way, { ...both, open: way.open && openTurn }]
    }),
  ]
}

/** Fewer pieces a sheet, as many as possible first; of equally many, those nearest in shape to what they were. */
function coarserCounts({ grid }: PreparedItem): readonly ColumnsAndRows[] {
  const now = grid.columns / grid.rows
  const unlike = (other: ColumnsAndRows) => Math.abs(Math.log(other.columns / other.rows / now))
  return Array.from({ length: grid.columns }, (_, column) =>
    Array.from({ length: grid.rows }, (_, row) => ({ columns: column + 1, rows: row + 1 })),
  )
    .flat()
    .filter(other => other.columns * other.rows < grid.columns * grid.rows)
    .filter(other => other.columns / other.rows <= Math.max(1, now * TALLEST))
    .sort((a, b) => b.columns * b.rows - a.columns * a.rows || unlike(a) - unlike(b))
    .slice(0, MOST_TRIES)
}
