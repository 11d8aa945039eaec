import type { PrintedItem } from '../../files/printed-plan.js'
import { printsDark } from '../../pieces/art/recolour.js'
import { pieceOf } from '../../pieces/faces/piece-of.js'
import type { Piece } from '../../pieces/piece.js'
import { type Bleed, imposeBacks } from '../../sheets/backs.js'
import { DEFAULT_BLEED_MM } from '../../sheets/bleed.js'
import { drawLattice } from '../../sheets/furniture/lattice.js'
import { pageRoom } from '../../sheets/grid.js'
import { imposeFronts } from '../../sheets/impose.js'
import { pageSheet } from '../../sheets/page-sheet.js'
import { orderSides } from '../../sheets/print-order.js'
import type { Sheet } from '../../sheets/sheet.js'
import { contrastOf } from '../deal/prepare-item.js'
import type { DrawnItem } from '../draw/draw-item.js'
import { itemCover, letteringFor, wasteNote } from './item-cover.js'
import { printedItem } from './printed-item.js'
import { sizeNotes } from './size-notes.js'
import { withKeyStrip } from './with-key-strip.js'

/** An item's sheets: its pieces with their backs first, then the pages that go with them, then the cover. */
export function imposeItem(item: DrawnItem): PrintedItem {
  const { prepared, set, notes, ofWords } = item.settled
  const pages = pageSheets(item)
  const pageNotes = [...ofWords, ...item.drawn.pages.faces.flatMap(({ face: { note } }) => note ?? [])]
  if (prepared.layout.kind !== 'pieces')
    return printedItem(prepared, set, { sheets: pages, notes: pageNotes })
  const { request, studied, job } = prepared
  const title = `${request.plan.title}: ${request.itemTitle}`
  const fronts = withKeyStrip(prepared, frontSheets(item, title))
  const backs = backSheets(item, fronts, title)
  const pile = studied.plan.printer?.handFed?.pile
  const sides = orderSides({ fronts, backs, flip: job.item.flip, pile })
  const cover = job.item.cover ? itemCover(prepared, set, fronts.length) : []
  return printedItem(prepared, set, {
    sheets: [...sides.sheets, ...pages, ...cover],
    notes: [...sides.notes, ...(set.notes ?? []), ...pageNotes],
    fittingNotes: [...notes, ...wasteNote(prepared), ...sizeNotes(item.drawn.fronts, request.type)],
  })
}

function frontSheets({ settled: { prepared }, drawn }: DrawnItem, title: string): readonly Sheet[] {
  const { job, grid, request } = prepared
  return imposeFronts({
    pieces: drawn.fronts.faces.map(pieceOf),
    grid,
    order: job.item.order,
    cut: job.item.cut,
    cutCorners: request.type.large,
    dark: printsDark(contrastOf(prepared)),
    title,
    label: { text: title, lettering: letteringFor(prepared) },
  })
}

/** The backs of an item's sheets, in the order of their fronts; none where the teacher asked for none. */
function backSheets(
  { settled: { prepared }, drawn }: DrawnItem,
  fronts: readonly Sheet[],
  title: string,
): readonly Sheet[] {
  const { job, grid, studied } = prepared
  const { back, flip } = job.item
  if (back === 'none') return []
  const pieces = new Map<string, Piece>(drawn.backs.faces.map(face => [face.face.id, pieceOf(face)]))
  const shift = studied.plan.printer?.backShift
  const bleed: Bleed = {
    widthMm: DEFAULT_BLEED_MM,
    paint: (area, corner) => drawLattice({ area, corner, pieceSize: grid.pieceSize }),
  }
  return imposeBacks({
    fronts,
    backOf: front => pieces.get(front.id),
    flip,
    ...(shift === undefined ? {} : { shift }),
    title,
    label: { text: title, lettering: letteringFor(prepared) },
    ...(back === 'pattern' ? { bleed } : {}),
  })
}

function pageSheets({ settled: { prepared }, drawn }: DrawnItem): readonly Sheet[] {
  const { sheetSize } = prepared.grid
  const room = pageRoom(prepared.grid)
  return drawn.pages.faces.map(({ face: { kind, title, bands }, art }) =>
    pageSheet({ art, bands, room, sheetSize, kind, title }),
  )
}
