import type { PageFace } from '../../layouts/layout.js'
import type { PrintedItem } from '../files/printed-plan.js'
import type { Size } from '../geometry.js'
import { type DrawnFace, drawFaces } from '../pieces/draw-faces.js'
import { pieceOf } from '../pieces/piece-of.js'
import { drawTextLine } from '../pieces/text-line.js'
import type { Outcome, Problem } from '../problems.js'
import type { CardSet } from '../sets/card-set.js'
import { printableBox } from '../sheets/grid.js'
import { imposeFronts } from '../sheets/impose.js'
import type { Sheet } from '../sheets/sheet.js'
import type { PreparedItem } from './prepare-item.js'

/** Draws an item's pieces and pages and puts them on sheets. */
export async function drawItem(prepared: PreparedItem): Promise<Outcome<PrintedItem>> {
  const { job, layout, request, grid } = prepared
  const { item } = job
  const room = printableBox(grid.sheetSize, grid.margins)
  const problems: Problem[] = []

  const set: Outcome<CardSet> =
    layout.kind === 'pieces' ? layout.set(request) : { ok: true, value: { cards: [] }, problems: [] }
  if (!set.ok) return set
  problems.push(...set.problems)

  const drawing = { ...request, place: item.place }
  const faces =
    layout.kind === 'pieces'
      ? set.value.cards.map(card => layout.face(request, card, set.value, grid.pieceSize))
      : []
  const drawn = await drawFaces(faces, drawing)
  const pages = await drawFaces(
    layout.kind === 'pieces' ? layout.pages(request, set.value, room) : layout.pages(request, room),
    drawing,
  )
  problems.push(...drawn.problems, ...pages.problems)
  if (!drawn.ok || !pages.ok) return { ok: false, problems }

  const title = `${request.setName}: ${item.name}`
  const fronts = imposeFronts({
    pieces: drawn.value.faces.map(pieceOf),
    grid,
    order: item.order,
    cut: item.cut,
    title,
    label: {
      text: title,
      lettering: line => drawTextLine({ typeface: request.typeface, ...line }).art,
    },
  })
  const sheets = [...fronts, ...pages.value.faces.map(page => pageSheet(page, grid.sheetSize, room))]
  return {
    ok: true,
    value: {
      name: job.name,
      layout: layout.name,
      group: job.group?.name ?? null,
      paper: { name: item.paper.name, ...grid.sheetSize },
      sheets: sheets.map((sheet, index) => ({ ...sheet, number: index + 1 })),
      ...(set.value.deal === undefined ? {} : { deal: set.value.deal }),
      notes: set.value.notes ?? [],
    },
    problems,
  }
}

/** A page without loose pieces: everything on it is furniture. */
function pageSheet(
  { face, art }: DrawnFace<PageFace>,
  size: Size,
  room: { readonly xMm: number; readonly yMm: number },
): Sheet {
  return {
    ...size,
    number: 1,
    side: 'front',
    kind: face.kind,
    title: face.title,
    pieces: [],
    cuts: [],
    furniture: art.map(placed => ({ ...placed, xMm: placed.xMm + room.xMm, yMm: placed.yMm + room.yMm })),
  }
}
