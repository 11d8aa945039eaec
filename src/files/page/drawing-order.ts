import type { Art, Piece } from '../../pieces/piece.js'
import type { PlacedPiece, Sheet } from '../../sheets/sheet.js'

/** An art on the page: where its origin lies, and whether it stands on its head about that origin. */
export interface Drawing {
  readonly art: Art
  readonly xMm: number
  readonly yMm: number
  readonly turn: 0 | 180
}

/** What belongs together on a page: a piece with its arts, or one piece of furniture. */
export interface DrawingGroup {
  /** Absent for furniture. */
  readonly piece?: Piece
  /** In reading order, for a reader who cannot see the page. Empty for furniture without words. */
  readonly words: string
  readonly drawings: readonly Drawing[]
}

/** Each format asks for them, some twice. */
const known = new WeakMap<Sheet, readonly DrawingGroup[]>()

/**
 * The order in which every format paints a sheet: pieces, furniture, then (not listed here) cut lines on top,
 * so that a filled card cannot hide the line along its edge.
 */
export function drawingGroups(sheet: Sheet): readonly DrawingGroup[] {
  const groups = known.get(sheet) ?? groupsOf(sheet)
  known.set(sheet, groups)
  return groups
}

function groupsOf(sheet: Sheet): readonly DrawingGroup[] {
  const pieces = sheet.pieces.map(placed => ({
    piece: placed.piece,
    words: placed.piece.text.join(', '),
    drawings: drawingsOfPiece(placed),
  }))
  const furniture = sheet.furniture.map(({ art, xMm, yMm }) => ({
    words: wordsOfArt(art),
    drawings: [{ art, xMm, yMm, turn: 0 as const }],
  }))
  return [...pieces, ...furniture]
}

/** The words of an art in reading order, and what its pictures show. */
export function wordsOfArt(art: Art): string {
  const pictures = art.shapes.flatMap(shape => (shape.kind === 'image' ? [shape.description] : []))
  return [...art.text.map(run => run.text), ...pictures].join(' ').trim()
}

function drawingsOfPiece({ piece, xMm, yMm, turn }: PlacedPiece): readonly Drawing[] {
  return piece.art.map(placed =>
    turn === 0
      ? { art: placed.art, xMm: xMm + placed.xMm, yMm: yMm + placed.yMm, turn }
      : {
          art: placed.art,
          xMm: xMm + piece.widthMm - placed.xMm,
          yMm: yMm + piece.heightMm - placed.yMm,
          turn,
        },
  )
}
