import { lazily } from '../../lazily.js'
import type { PrintItem } from '../../plan/plan.js'
import type { CardSet } from '../../sets/card-set.js'
import { sizeAsked } from '../deal/item-jobs.js'
import type { PreparedItem } from '../deal/prepare-item.js'
import { type GridToTry, gridsToTry, type HeldByPlan, sheetsFor } from './grids-to-try.js'

/** The item with its words on other pieces. */
export interface RoomierItem {
  /** What is other of the item. */
  readonly changes: Partial<PrintItem>
  /** The same, as the teacher would write it: `2 across and 3 down`. */
  readonly says: string
  /** Sheets of card that its set takes. */
  readonly sheets: number
  /** Whether the set has to be dealt again for it. */
  readonly dealsAnew: boolean
}

/** Other ways to lay out an item: the sheet divided otherwise, the paper turned, boards with fewer cells. Each is found once it is asked for. */
export interface RoomierItems {
  /** Divisions of the sheet that the plan leaves open, so that one may be taken without asking; the fewest sheets first. */
  readonly openGrids: () => readonly RoomierItem[]
  /** The same, and then the boards that it leaves open. */
  readonly open: () => readonly RoomierItem[]
  /** Those for which the plan would have to be changed. */
  readonly asking: () => readonly RoomierItem[]
}

/** How many ways that need the plan changed are worth the time. */
const MOST_ASKING = 40

export function roomierItems(prepared: PreparedItem, set: CardSet): RoomierItems {
  const { job } = prepared
  // With its size in the item itself, a group's large print keeps the division that it is given here.
  const ofGroup = job.item.size === undefined && job.group?.size !== undefined
  const sized: Partial<PrintItem> = ofGroup ? { size: sizeAsked(job) } : {}
  const onGrids = (held: HeldByPlan): readonly RoomierItem[] =>
    gridsToTry(prepared, set, held).map(tried => ({
      changes: { ...sized, ...changesFor(tried) },
      says: inWords(prepared, tried),
      sheets: tried.sheets,
      dealsAnew: false,
    }))
  const openGrids = lazily(() => {
    const held = heldByPlan(prepared, ofGroup)
    return held === undefined ? [] : onGrids(held)
  })
  const askingGrids = lazily(() => onGrids({}))
  const boards = lazily(() =>
    boardsAnew(prepared, set, { ofGroup, sized, open: openGrids(), asking: askingGrids() }),
  )
  const boardsThatAre = (isOpen: boolean) =>
    boards()
      .filter(each => each.isOpen === isOpen)
      .map(each => each.way)
  return {
    openGrids,
    open: () => [...openGrids(), ...boardsThatAre(true)],
    asking: () => {
      const known = new Set(openGrids().map(({ says }) => says))
      const grids = askingGrids().filter(({ says }) => !known.has(says))
      return [...grids.slice(0, MOST_ASKING), ...boardsThatAre(false)]
    },
  }
}

interface OnGrids {
  readonly ofGroup: boolean
  readonly sized: Partial<PrintItem>
  readonly open: readonly RoomierItem[]
  readonly asking: readonly RoomierItem[]
}

/** Boards with fewer cells, on the sheet as it is divided and on others. */
function boardsAnew(
  prepared: PreparedItem,
  set: CardSet,
  { ofGroup, sized, open, asking }: OnGrids,
): readonly { readonly way: RoomierItem; readonly isOpen: boolean }[] {
  const { job, layout, request, grid } = prepared
  const sheets = sheetsFor(prepared, grid, set)
  // A board alone on its sheet turns with the paper; boards that share one may have one each.
  const onGrids = [...open, ...asking]
  const turned = onGrids.filter(({ changes }) => changes.orientation !== grid.orientation).slice(0, 1)
  const isAlone = grid.columns * grid.rows === 1
  const others =
    prepared.gridRequest.division.kind === 'card' ? [] : isAlone ? turned : onGrids.filter(isWhole)
  const boards = layout.kind === 'pieces' ? (layout.roomier?.(request) ?? []) : []
  return boards.flatMap(board => {
    const options = { ...job.item.options, ...board.options }
    const { timesSheets = 1 } = board
    const changes = { ...sized, options }
    const way: RoomierItem = { changes, says: board.says, sheets: sheets * timesSheets, dealsAnew: true }
    const isOpen = board.open || (ofGroup && timesSheets === 1)
    const both = others.map(other => ({
      way: {
        ...way,
        changes: { ...other.changes, options },
        says: `${board.says} and ${other.says}`,
        sheets: other.sheets * timesSheets,
      },
      isOpen: isOpen && open.includes(other),
    }))
    return [{ way, isOpen }, ...both]
  })
}

/** A board a sheet. */
function isWhole({ changes: { division } }: RoomierItem): boolean {
  return division?.kind === 'count' && division.across === 1 && division.down === 1
}

/** What the plan says of the division; a group's size opens the counts, which are the class's. Undefined: a card's size. */
function heldByPlan({ job, gridRequest }: PreparedItem, ofGroup: boolean): HeldByPlan | undefined {
  const { division, orientation } = job.item
  if (gridRequest.division.kind === 'card') return undefined
  if (ofGroup || division.kind !== 'count') return { orientation }
  return { orientation, across: division.across, down: division.down }
}

function changesFor({ grid: { columns, rows, orientation } }: GridToTry): Partial<PrintItem> {
  return { orientation, division: { kind: 'count', across: columns, down: rows } }
}

function inWords({ grid: now, gridRequest }: PreparedItem, { grid }: GridToTry): string {
  const { columns, rows, orientation } = grid
  const turned = orientation === now.orientation ? '' : `orientation: ${orientation}`
  if (columns === now.columns && rows === now.rows && turned !== '') return turned
  const instead = gridRequest.division.kind === 'card' ? ' in place of "card"' : ''
  const counts = `${columns} across and ${rows} down${instead}`
  return turned === '' ? counts : `${counts} on ${orientation} paper`
}
