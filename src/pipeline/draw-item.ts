import type { LayoutRequest, PageFace, PieceLayout } from '../../layouts/layout.js'
import type { PrintedItem } from '../files/printed-plan.js'
import type { Size } from '../geometry.js'
import { type DrawnFace, drawFaces } from '../pieces/draw-faces.js'
import type { CardFace } from '../pieces/face.js'
import { pieceOf } from '../pieces/piece-of.js'
import type { Outcome, Problem } from '../problems.js'
import type { CardSet } from '../sets/card-set.js'
import { pageRoom } from '../sheets/grid.js'
import { imposeFronts } from '../sheets/impose.js'
import { orderSides } from '../sheets/print-order.js'
import type { Sheet } from '../sheets/sheet.js'
import { drawBacks } from './draw-backs.js'
import { itemCover, letteringFor, sizeNote, wasteNote } from './item-cover.js'
import { withKeyStrip } from './item-strip.js'
import type { PreparedItem } from './prepare-item.js'
import { contrastOf } from './prepare-item.js'
import { setsOfPlan } from './sets-of-plan.js'

/** An item on its sheets, with what `check` tells of it. */
export interface DrawnItem {
  readonly prepared: PreparedItem
  readonly set: CardSet
  readonly printed: PrintedItem
}

/** Draws an item's pieces and pages and puts them on sheets: the pieces first, then the pages that go with them. */
export async function drawItem(prepared: PreparedItem): Promise<Outcome<DrawnItem>> {
  const { job, layout, request, grid } = prepared
  const { item } = job
  const room = pageRoom(grid)
  const drawing = { ...request, place: item.place }
  const contrast = contrastOf(prepared)
  if (layout.kind === 'pages') {
    const pages = await drawFaces(layout.pages(request, room), drawing)
    if (!pages.ok) return pages
    const sheets = pages.value.faces.map(page => pageSheet(page, prepared))
    return { ok: true, value: withoutPieces(prepared, sheets), problems: [] }
  }
  if (layout.kind === 'sheets') {
    const lettering = letteringFor(prepared)
    const made = layout.sheets(request, { grid, lettering, sets: () => setsOfPlan(prepared) })
    return made.ok ? { ...made, value: withoutPieces(prepared, made.value) } : made
  }

  const dealt = layout.set(request)
  if (!dealt.ok) return dealt
  const set = dealt.value
  const problems: Problem[] = [...dealt.problems]
  const faces = facesOf(layout, request, set, grid.pieceSize)
  problems.push(...faces.problems)
  if (!faces.ok) return { ok: false, problems }
  const drawn = await drawFaces(faces.value, { ...drawing, contrast })
  const pages = await drawFaces(layout.pages(request, set, room), drawing)
  if (!drawn.ok || !pages.ok)
    return { ok: false, problems: [...problems, ...drawn.problems, ...pages.problems] }

  const title = `${request.setTitle}: ${item.name}`
  const imposed = imposeFronts({
    pieces: drawn.value.faces.map(pieceOf),
    grid,
    order: item.order,
    cut: item.cut,
    title,
    cutCorners: request.type.large,
    label: { text: title, lettering: letteringFor(prepared) },
  })
  const fronts = withKeyStrip(prepared, imposed)
  const backs = await drawBacks(prepared, set, fronts, title)
  problems.push(...backs.problems)
  if (!backs.ok) return { ok: false, problems }
  const pile = request.plan.printer?.handFed?.pile
  const sides = orderSides({ fronts, backs: backs.value, flip: item.flip, pile })
  const sheets = [
    ...sides.sheets,
    ...pages.value.faces.map(page => pageSheet(page, prepared)),
    ...(item.cover ? itemCover(prepared, set, fronts.length) : []),
  ]
  const notes = [...sides.notes, ...wasteNote(prepared), ...sizeNote(drawn.value.fits), ...(set.notes ?? [])]
  return { ok: true, value: { prepared, set, printed: printedItem(prepared, set, sheets, notes) }, problems }
}

function withoutPieces(prepared: PreparedItem, sheets: readonly Sheet[]): DrawnItem {
  const set: CardSet = { cards: [] }
  return { prepared, set, printed: printedItem(prepared, set, sheets, []) }
}

/** The faces of a set on pieces of this size. */
export function facesOf(
  layout: PieceLayout,
  request: LayoutRequest,
  set: CardSet,
  size: Size,
): Outcome<readonly CardFace[]> {
  if ('faces' in layout) return layout.faces(request, set, size)
  const value = set.cards.map(card => layout.face(request, card, set, size))
  return { ok: true, value, problems: [] }
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
