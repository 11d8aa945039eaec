import type { PlacedItem } from '../../files/printed-plan.js'
import { printsDark } from '../../pieces/art/recolour.js'
import { drawPiece, type PieceToDraw, piecesToDraw } from '../../pieces/faces/piece-of.js'
import type { PlacedArt } from '../../pieces/piece.js'
import { isJoined } from '../../sets/set-contents.js'
import { type Bleed, imposeBacks } from '../../sheets/backs.js'
import { DEFAULT_BLEED_MM } from '../../sheets/bleed.js'
import { drawLattice } from '../../sheets/furniture/lattice.js'
import { pageRoom } from '../../sheets/grid.js'
import { imposeFronts } from '../../sheets/impose.js'
import { pageSheet } from '../../sheets/page-sheet.js'
import { orderSides } from '../../sheets/print-order.js'
import { asToDraw, type Sheet, type SheetToDraw } from '../../sheets/sheet.js'
import { contrastOf } from '../deal/prepare-item.js'
import type { ItemToDraw } from '../draw/draw-item.js'
import { itemCover, letteringFor, wasteNote } from './item-cover.js'
import { printedItem } from './printed-item.js'
import { sizeNotes } from './size-notes.js'
import { withKeyStrip } from './with-key-strip.js'

/** An item's sheets: its pieces with their backs first, then the pages that go with them, then the cover. */
export function imposeItem(item: ItemToDraw): PlacedItem {
  const { prepared, set, notes, ofWords } = item.settled
  const pages = pageSheets(item)
  const pageNotes = [...ofWords, ...item.drawing.pages.faces.flatMap(({ note }) => note ?? [])]
  if (prepared.layout.kind !== 'pieces')
    return printedItem(prepared, set, { sheets: pages, notes: [...(set.notes ?? []), ...pageNotes] })
  const { request, studied, job } = prepared
  const title = `${request.plan.title}: ${request.itemTitle}`
  const fronts = withKeyStrip(prepared, frontSheets(item, title))
  const backs = backSheets(item, fronts, title)
  const pile = studied.plan.printer?.handFed?.pile
  const sides = orderSides({ fronts, backs, flip: job.item.flip, pile })
  const cover = job.item.cover ? itemCover(prepared, set, { sheetsOfCard: fronts.length, pages }) : []
  return printedItem(prepared, set, {
    sheets: [...sides.sheets.map(toDraw), ...pages, ...cover.map(asToDraw)],
    notes: [...sides.notes, ...(set.notes ?? []), ...pageNotes],
    fittingNotes: [...notes, ...wasteNote(prepared), ...sizeNotes(item.drawing.fronts, request.type)],
  })
}

function frontSheets(
  { settled: { prepared, set }, drawing }: ItemToDraw,
  title: string,
): readonly Sheet<PieceToDraw>[] {
  const { job, grid, request } = prepared
  return imposeFronts({
    pieces: piecesToDraw(drawing.fronts),
    grid,
    order: job.item.order,
    cut: job.item.cut,
    cutCorners: request.type.large && !isJoined(set),
    dark: printsDark(contrastOf(prepared)),
    title,
    label: { text: title, lettering: letteringFor(prepared) },
  })
}

/** The backs of an item's sheets, in the order of their fronts; none where the teacher asked for none. */
function backSheets(
  { settled: { prepared }, drawing }: ItemToDraw,
  fronts: readonly Sheet<PieceToDraw>[],
  title: string,
): readonly Sheet<PieceToDraw>[] {
  const { job, grid, studied } = prepared
  const { back, flip } = job.item
  if (back === 'none') return []
  const pieces = new Map(piecesToDraw(drawing.backs).map(piece => [piece.id, piece]))
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

function pageSheets({ settled: { prepared }, drawing }: ItemToDraw): readonly SheetToDraw[] {
  const { sheetSize } = prepared.grid
  const room = pageRoom(prepared.grid)
  const { faces, draw } = drawing.pages
  return faces.map(({ kind, title, bands }, index) => {
    const sheet = (art: readonly PlacedArt[]) => pageSheet({ art, bands, room, sheetSize, kind, title })
    return { ...asToDraw(sheet([])), draw: () => sheet(draw(index).art) }
  })
}

/** A sheet of pieces, each drawn when it is. */
function toDraw(sheet: Sheet<PieceToDraw>): SheetToDraw {
  const { widthMm, heightMm, number, side, kind, title, pieces } = sheet
  const draw = () => ({
    ...sheet,
    pieces: pieces.map(placed => ({ ...placed, piece: drawPiece(placed.piece) })),
  })
  return { widthMm, heightMm, number, side, kind, title, pieces, draw }
}
