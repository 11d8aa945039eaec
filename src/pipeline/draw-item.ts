import type { PageFace, PieceLayout } from '../../layouts/layout.js'
import type { PrintedItem } from '../files/printed-plan.js'
import { failWith, succeed } from '../outcomes.js'
import { printsDark } from '../pieces/art/recolour.js'
import { type DrawnFace, drawFaces, drawFitted } from '../pieces/faces/draw-faces.js'
import { pieceOf } from '../pieces/faces/piece-of.js'
import type { Outcome, Problem } from '../problems.js'
import type { CardSet } from '../sets/card-set.js'
import { pageRoom } from '../sheets/grid.js'
import { imposeFronts } from '../sheets/impose.js'
import { orderSides } from '../sheets/print-order.js'
import type { Sheet } from '../sheets/sheet.js'
import { drawBacks } from './draw-backs.js'
import { itemCover, letteringFor, wasteNote } from './item-cover.js'
import type { ItemJob } from './item-jobs.js'
import { withKeyStrip } from './item-strip.js'
import type { PreparedItem } from './prepare-item.js'
import { contrastOf } from './prepare-item.js'
import { setsOfPlan } from './sets-of-plan.js'
import { type SettledItem, settleItem } from './settle-item.js'
import { sizeNotes } from './size-notes.js'

/** An item on its sheets, with what `check` tells of it. */
export interface DrawnItem {
  readonly prepared: PreparedItem
  readonly set: CardSet
  readonly printed: PrintedItem
}

/** Draws an item's pieces and pages and puts them on sheets: the pieces first, then the pages that go with them. */
export async function drawItem(prepared: PreparedItem): Promise<Outcome<DrawnItem | null>> {
  const { job, layout, request, grid } = prepared
  const { item } = job
  if (layout.kind === 'pages') {
    const room = pageRoom(grid)
    const pages = await drawFaces(layout.pages(request, room), { ...request, place: item.place })
    if (!pages.ok) return pages
    const sheets = pages.value.faces.map(page => pageSheet(page, prepared))
    return succeed(withoutPieces(prepared, sheets))
  }
  if (layout.kind === 'sheets') {
    const lettering = letteringFor(prepared)
    const made = layout.sheets(request, { grid, lettering, sets: () => setsOfPlan(prepared) })
    return made.ok ? { ...made, value: withoutPieces(prepared, made.value) } : made
  }

  const dealt = layout.set(request)
  if (!dealt.ok) return leftOut(job, dealt.problems) ?? dealt
  const settled = await settleItem(prepared, dealt.value)
  const problems = [...dealt.problems, ...settled.problems]
  if (!settled.ok) return failWith(problems)
  const drawn = await drawSettled(settled.value, layout)
  return { ...drawn, problems: [...problems, ...drawn.problems] }
}

async function drawSettled(
  { prepared, set, fitted, notes: choices }: SettledItem,
  layout: PieceLayout,
): Promise<Outcome<DrawnItem>> {
  const { job, request, grid } = prepared
  const { item } = job
  const drawing = { ...request, place: item.place }
  const pages = await drawFaces(layout.pages(request, set, pageRoom(grid)), drawing)
  if (!pages.ok) return pages
  const drawn = drawFitted(fitted, { ...drawing, contrast: contrastOf(prepared) })
  const title = `${request.setTitle}: ${item.name}`
  const imposed = imposeFronts({
    pieces: drawn.faces.map(pieceOf),
    grid,
    order: item.order,
    cut: item.cut,
    cutCorners: request.type.large,
    dark: printsDark(contrastOf(prepared)),
    title,
    label: { text: title, lettering: letteringFor(prepared) },
  })
  const fronts = withKeyStrip(prepared, imposed)
  const backs = await drawBacks(prepared, set, fronts, title)
  if (!backs.ok) return backs
  const pile = request.plan.printer?.handFed?.pile
  const sides = orderSides({ fronts, backs: backs.value, flip: item.flip, pile })
  const sheets = [
    ...sides.sheets,
    ...pages.value.faces.map(page => pageSheet(page, prepared)),
    ...(item.cover ? itemCover(prepared, set, fronts.length) : []),
  ]
  const notes = [
    ...sides.notes,
    ...choices,
    ...wasteNote(prepared),
    ...sizeNotes(drawn, request.type),
    ...(set.notes ?? []),
  ]
  const printed = printedItem(prepared, set, sheets, notes)
  return succeed({ prepared, set, printed }, backs.problems)
}

function withoutPieces(prepared: PreparedItem, sheets: readonly Sheet[]): DrawnItem {
  const set: CardSet = { cards: [] }
  return { prepared, set, printed: printedItem(prepared, set, sheets, []) }
}

/**
 * What the class's words are enough for, a group's few words may not be: then nothing is made for that group, with a
 * warning. A group that the item names stays an error.
 */
function leftOut({ item, group }: ItemJob, problems: readonly Problem[]): Outcome<null> | undefined {
  if (group === null || group.words.length === 0 || item.groups !== undefined) return undefined
  const warnings = problems.map(problem => ({
    ...problem,
    severity: 'warning' as const,
    message: `nothing is made for ${group.name}: ${problem.message}`,
  }))
  return succeed(null, warnings)
}

function printedItem(
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
    sheets: sheets.map((sheet, index) => ({ ...sheet, number: index + 1 })),
    ...(deal === undefined ? {} : { deal }),
    notes,
  }
}

/** A page without loose pieces: everything on it is furniture, within the margins. */
function pageSheet({ face, art }: DrawnFace<PageFace>, { grid }: PreparedItem): Sheet {
  const room = pageRoom(grid)
  return {
    ...grid.sheetSize,
    number: 1,
    side: 'front',
    kind: face.kind,
    title: face.title,
    pieces: [],
    cuts: [],
    furniture: art.map(placed => ({ ...placed, xMm: placed.xMm + room.xMm, yMm: placed.yMm + room.yMm })),
  }
}
