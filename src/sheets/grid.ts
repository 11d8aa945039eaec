/** Divides a sheet of paper into equal places, centred, sharing their edges where there is no gap. */

import type { Box, ColumnsAndRows, Size } from '../geometry.js'
import { fail, succeed } from '../outcomes.js'
import type { Division, Paper } from '../plan/plan.js'
import type { Outcome, Place } from '../problems.js'
import { nothingFits, reachWarnings, SMALLEST_PIECE_MM } from './grid-problems.js'
import { DEFAULT_MARGIN_MM, defaultMargins, evenMargins, type Margins } from './margins.js'

export type Orientation = 'portrait' | 'landscape'

/** How a layout likes its sheet divided where the teacher leaves it open. */
export interface PreferredGrid extends ColumnsAndRows {
  readonly orientation?: Orientation | undefined
}

export interface GridRequest {
  readonly paper: Paper
  readonly orientation?: Orientation | undefined
  /** What the teacher set, obeyed on all four sides; left out: what printers reach, with room for a label. */
  readonly marginMm?: number | undefined
  /** Between neighbouring pieces; 0: they share an edge and one cut serves both. */
  readonly gapMm: number
  readonly division: Division
  readonly preferred: PreferredGrid
  /**
   * Kept free at the foot for a strip, beyond the margin. The grid then stands as much higher; a back lies behind its own
   * front's box, so backs meet their fronts all the same.
   */
  readonly stripMm?: number | undefined
  /** Where the item stands in the plan, for messages. */
  readonly place: Place
}

export interface Grid extends ColumnsAndRows {
  readonly orientation: Orientation
  readonly sheetSize: Size
  readonly margins: Margins
  readonly pieceSize: Size
  /** Top left corner of the first place. */
  readonly originXMm: number
  readonly originYMm: number
  readonly gapMm: number
  /** Share of the paper's area, 0 to 1, that no piece covers when every place is taken. */
  readonly wasteShare: number
}

export function divideSheet(request: GridRequest): Outcome<Grid> {
  const grids = orientationsToTry(request).map(orientation => gridFor(request, orientation))
  const fitting = grids.filter(grid => grid !== undefined)
  const [first] = fitting
  if (first === undefined) {
    const room = roomForPieces(...paperAndMargins(request, request.orientation ?? 'portrait'), request)
    return fail(nothingFits(request, room, fitsTurned(request)))
  }
  const best = fitting.reduce(
    (least, grid) => (grid.wasteShare < least.wasteShare - 1e-9 ? grid : least),
    first,
  )
  return succeed(best, reachWarnings(request))
}

/** Number of places on a sheet. */
export function placesOf(grid: Grid): number {
  return grid.columns * grid.rows
}

/** The rows and columns that the first `used` places take up; every order fills its fullest sheet from the first place on. */
export function usedPart(grid: Grid, used: number): Grid {
  return {
    ...grid,
    columns: Math.min(grid.columns, Math.max(1, used)),
    rows: Math.min(grid.rows, Math.max(1, Math.ceil(used / grid.columns))),
  }
}

/** The box of a place, counted from 0 by rows from the top left. */
export function placeBox(grid: Grid, place: number): Box {
  const column = place % grid.columns
  const row = Math.floor(place / grid.columns)
  return {
    xMm: tidy(grid.originXMm + column * (grid.pieceSize.widthMm + grid.gapMm)),
    yMm: tidy(grid.originYMm + row * (grid.pieceSize.heightMm + grid.gapMm)),
    ...grid.pieceSize,
  }
}

/** All the pieces of a full sheet and the gaps between them. */
export function blockBox(grid: Grid): Box {
  return {
    xMm: grid.originXMm,
    yMm: grid.originYMm,
    widthMm: tidy(grid.columns * (grid.pieceSize.widthMm + grid.gapMm) - grid.gapMm),
    heightMm: tidy(grid.rows * (grid.pieceSize.heightMm + grid.gapMm) - grid.gapMm),
  }
}

/** The paper less its margins. */
export function printableBox(sheetSize: Size, margins: Margins): Box {
  return {
    xMm: margins.sideMm,
    yMm: margins.endMm,
    widthMm: sheetSize.widthMm - 2 * margins.sideMm,
    heightMm: sheetSize.heightMm - 2 * margins.endMm,
  }
}

/**
 * Room for a page of text beside the set (a cover, a key, a list): within the grid's margins, but not nearer to the
 * paper's edge than printers reach, whatever the cards do.
 */
export function pageRoom({ sheetSize, margins }: Grid): Box {
  return printableBox(sheetSize, {
    sideMm: Math.max(margins.sideMm, DEFAULT_MARGIN_MM),
    endMm: Math.max(margins.endMm, DEFAULT_MARGIN_MM),
  })
}

export function sheetSizeOf(paper: Paper, orientation: Orientation): Size {
  return orientation === 'portrait'
    ? { widthMm: paper.widthMm, heightMm: paper.heightMm }
    : { widthMm: paper.heightMm, heightMm: paper.widthMm }
}

/** A card's size settles nothing about the way the paper lies, so both ways are weighed; portrait wins a tie. */
function orientationsToTry(request: GridRequest): readonly Orientation[] {
  if (request.orientation !== undefined) return [request.orientation]
  if (request.division.kind === 'card') return ['portrait', 'landscape']
  return [request.preferred.orientation ?? 'portrait']
}

function gridFor(request: GridRequest, orientation: Orientation): Grid | undefined {
  const [sheetSize, margins] = paperAndMargins(request, orientation)
  const room = roomForPieces(sheetSize, margins, request)
  const { columns, rows, pieceSize } = fillRoom(room, request)
  const tooSmall = Math.min(pieceSize.widthMm, pieceSize.heightMm) < SMALLEST_PIECE_MM
  if (columns < 1 || rows < 1 || tooSmall) return undefined
  const blockWidth = columns * (pieceSize.widthMm + request.gapMm) - request.gapMm
  const blockHeight = rows * (pieceSize.heightMm + request.gapMm) - request.gapMm
  const pieceArea = pieceSize.widthMm * pieceSize.heightMm
  return {
    orientation,
    sheetSize,
    margins,
    columns,
    rows,
    pieceSize,
    originXMm: tidy((sheetSize.widthMm - blockWidth) / 2),
    originYMm: tidy(room.yMm + (room.heightMm - blockHeight) / 2),
    gapMm: request.gapMm,
    wasteShare: 1 - (columns * rows * pieceArea) / (sheetSize.widthMm * sheetSize.heightMm),
  }
}

function paperAndMargins(request: GridRequest, orientation: Orientation): readonly [Size, Margins] {
  const sheetSize = sheetSizeOf(request.paper, orientation)
  const { marginMm, division } = request
  return [
    sheetSize,
    marginMm === undefined ? defaultMargins(sheetSize, division.kind) : evenMargins(marginMm),
  ]
}

/** Within the margins, above the strip. */
function roomForPieces(sheetSize: Size, margins: Margins, { stripMm = 0 }: GridRequest): Box {
  const room = printableBox(sheetSize, margins)
  return { ...room, heightMm: room.heightMm - stripMm }
}

function fitsTurned(request: GridRequest): boolean {
  if (request.orientation === undefined) return false
  return gridFor(request, request.orientation === 'portrait' ? 'landscape' : 'portrait') !== undefined
}

interface Filling extends ColumnsAndRows {
  readonly pieceSize: Size
}

function fillRoom(room: Size, request: GridRequest): Filling {
  const { division, gapMm, preferred } = request
  if (division.kind === 'card') {
    const columns = howMany(room.widthMm, division.size.widthMm, gapMm)
    const rows = howMany(room.heightMm, division.size.heightMm, gapMm)
    return { columns, rows, pieceSize: division.size }
  }
  const across = division.kind === 'count' ? division.across : preferred.columns
  const down = division.kind === 'count' ? division.down : preferred.rows
  const columns =
    across ??
    companion(room.widthMm, share(room.heightMm, down!, gapMm), gapMm, 1 / shape(room, preferred, gapMm))
  const rows =
    down ??
    companion(room.heightMm, share(room.widthMm, columns, gapMm), gapMm, shape(room, preferred, gapMm))
  const pieceSize = {
    widthMm: share(room.widthMm, columns, gapMm),
    heightMm: share(room.heightMm, rows, gapMm),
  }
  return { columns, rows, pieceSize }
}

/** How many pieces of a length go into a room with gaps between them; a hair's breadth too little still counts. */
function howMany(roomMm: number, pieceMm: number, gapMm: number): number {
  return Math.floor((roomMm + gapMm) / (pieceMm + gapMm) + 1e-9)
}

/** Length of each of `count` pieces in a room, rounded down to a millionth of a millimetre. */
function share(roomMm: number, count: number, gapMm: number): number {
  return Math.floor(((roomMm - (count - 1) * gapMm) / count) * 1e6 + 1e-3) / 1e6
}

/** Height over width of the pieces that the layout likes. */
function shape(room: Size, preferred: PreferredGrid, gapMm: number): number {
  return share(room.heightMm, preferred.rows, gapMm) / share(room.widthMm, preferred.columns, gapMm)
}

/** The count the other way that comes nearest to the layout's own shape of piece. */
function companion(roomMm: number, otherSideMm: number, gapMm: number, ratio: number): number {
  return Math.max(1, Math.round((roomMm + gapMm) / (otherSideMm * ratio + gapMm)))
}

/** Rounds away the dust of floating point: positions are kept to a billionth of a millimetre. */
function tidy(value: number): number {
  return Math.round(value * 1e9) / 1e9
}
