/** What the sheets stage gives: one side of paper as plain data, everything placed in mm from its top left corner. */
import type { Box, Size } from '../geometry.js'
import type { Band, Piece, PlacedArt } from '../pieces/piece.js'

export interface PlacedPiece {
  readonly piece: Piece
  readonly xMm: number
  readonly yMm: number
  /** Degrees, about the piece's own centre; 180 on backs for a short-edge flip. */
  readonly turn: 0 | 180
}

/** A straight cut or a tick in the margin, black; white where it runs over dark pieces. */
export interface CutLine {
  readonly x1Mm: number
  readonly y1Mm: number
  readonly x2Mm: number
  readonly y2Mm: number
  readonly widthMm: number
  readonly white?: true
}

export type SheetKind =
  | 'pieces'
  | 'key'
  | 'caller'
  | 'rules'
  | 'answers'
  | 'list'
  | 'cover'
  | 'calibration'
  | 'checklist'
  | 'labels'

export interface Sheet extends Size {
  /** 1, 2, … within the item, in print order. */
  readonly number: number
  readonly side: 'front' | 'back'
  readonly kind: SheetKind
  /** What the sheet is, in words: its `<title>`. */
  readonly title: string
  readonly pieces: readonly PlacedPiece[]
  readonly cuts: readonly CutLine[]
  /** Everything else on the page: labels, rulers, lists, keys. Never inside a piece. */
  readonly furniture: readonly PlacedArt[]
  /** Of a page of rows, for a reader who goes through it by ear; what stands above them is its heading. */
  readonly bands?: readonly Band[]
}

/** The box that a placed piece takes on its sheet. */
export function pieceBox({ piece, xMm, yMm }: PlacedPiece): Box {
  return { xMm, yMm, widthMm: piece.widthMm, heightMm: piece.heightMm }
}
