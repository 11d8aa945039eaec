/** What the sheets stage gives: one side of paper as plain data, everything placed in mm from its top left corner. */
import type { Box, Size } from '../geometry.js'
import type { Band, Piece, PieceOutline, PlacedArt } from '../pieces/piece.js'

export interface PlacedPiece<P extends PieceOutline = Piece> {
  readonly piece: P
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
  | 'notes'
  | 'list'
  | 'practice'
  | 'screen'
  | 'cover'
  | 'calibration'
  | 'checklist'
  | 'labels'

export interface Sheet<P extends PieceOutline = Piece> extends Size {
  /** 1, 2, … within the item, in print order. */
  readonly number: number
  readonly side: 'front' | 'back'
  readonly kind: SheetKind
  /** What the sheet is, in words: its `<title>`. */
  readonly title: string
  readonly pieces: readonly PlacedPiece<P>[]
  readonly cuts: readonly CutLine[]
  /** Everything else on the page: labels, rulers, lists, keys. Never inside a piece. */
  readonly furniture: readonly PlacedArt[]
  /** Of a page of rows, for a reader who goes through it by ear; what stands above them is its heading. */
  readonly bands?: readonly Band[]
}

/** A sheet on which everything has its place and nothing is drawn yet: drawn, it takes a hundred times the memory. */
export interface SheetToDraw
  extends Pick<
    Sheet<PieceOutline>,
    'widthMm' | 'heightMm' | 'number' | 'side' | 'kind' | 'title' | 'pieces'
  > {
  /** Equal each time, however often it is drawn. */
  readonly draw: () => Sheet
}

/** The box that a placed piece takes on its sheet. */
export function pieceBox({ piece, xMm, yMm }: PlacedPiece<PieceOutline>): Box {
  return { xMm, yMm, widthMm: piece.widthMm, heightMm: piece.heightMm }
}

/** A sheet that is drawn already, as one that is not. */
export function asToDraw(sheet: Sheet): SheetToDraw {
  const { widthMm, heightMm, number, side, kind, title, pieces } = sheet
  return { widthMm, heightMm, number, side, kind, title, pieces, draw: () => sheet }
}
