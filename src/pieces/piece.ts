/** What the pieces stage gives: a card's face, drawn once, as plain data in mm. */
import type { Box, Size } from '../geometry.js'
import type { CardKind } from '../sets/card-set.js'

/** A filled outline, or a stroked one; `d` is SVG path data in mm (absolute M L Q C Z, at most 3 decimals). */
export interface PathShape {
  readonly kind: 'path'
  readonly d: string
  /** `#rrggbb`, or `none`. */
  readonly fill: string
  readonly stroke?: {
    readonly color: string
    readonly widthMm: number
    readonly dashMm?: readonly number[]
    readonly cap?: 'butt' | 'round'
  }
  /**
   * Of a line of text, the same outline word by word: a word that stands in another line too is the same shape there, so that what
   * draws lines can take it from there.
   */
  readonly words?: readonly PlacedWord[]
}

/** A word of a line of text: its outline, and where the left end of its baseline stands, which is the outline's origin. */
export interface PlacedWord {
  readonly outline: PathShape
  readonly xMm: number
  readonly yMm: number
}

/** A teacher's picture, whole, inside `box`. */
export interface ImageShape {
  readonly kind: 'image'
  /** Contents of a PNG or JPEG file. */
  readonly bytes: Uint8Array
  readonly mediaType: 'image/png' | 'image/jpeg'
  readonly box: Box
  /** What it shows, for a reader who cannot see it. */
  readonly description: string
}

export type Shape = PathShape | ImageShape

/** Text as it was drawn, for `<title>`, for alternative text and for selecting text in a PDF. */
export interface TextRun {
  readonly text: string
  /** Left end of the baseline. */
  readonly xMm: number
  readonly baselineMm: number
  readonly widthMm: number
  /** The em. */
  readonly sizeMm: number
}

/**
 * A drawing with its origin at its top left corner. Arts are shared by identity: the same word at the same size
 * on thirty boards is one `Art`, so that a format can draw it once.
 */
export interface Art extends Size {
  readonly shapes: readonly Shape[]
  readonly text: readonly TextRun[]
}

/** A row of a page of text, for a reader who goes through the page by ear. */
export interface Band {
  readonly yMm: number
  readonly heightMm: number
  /** Of a row that belongs to a table. */
  readonly cells?: BandCells
}

export interface BandCells {
  /** Left edges, from the left of the page or, in a row, of the row. */
  readonly leftsMm: readonly number[]
  /** Which cells are headings: all, over their columns, or the one at this place, beside its row. */
  readonly headings: 'all' | number
}

export interface PlacedArt {
  readonly art: Art
  readonly xMm: number
  readonly yMm: number
}

/** Where a mark stands, in the coordinates of the piece (on a piece) or of the word's art (on a word). */
export interface PlacedMark extends Box {
  readonly word: string
  readonly letters: string
  readonly start: number
  readonly end: number
  readonly line?: string
  readonly outline?: string
  /** The small letters beside it, or in the corner of a whole word's room. */
  readonly tag?: string
  readonly color?: string
}

/** What is known of a card or board before it is drawn: all that its place on paper depends on. */
export interface PieceOutline extends Size {
  readonly id: string
  readonly kind: CardKind
  readonly number: number
  readonly copy: number
  /** The words that stand on it, in reading order. */
  readonly text: readonly string[]
  /** The words printed small on it that tell it from every other piece of the plan; a back has none. */
  readonly setMark?: string
  readonly cells?: readonly (readonly (string | null)[])[]
}

/** One card or board, its size final, its place on paper not yet known. */
export interface Piece extends PieceOutline {
  readonly art: readonly PlacedArt[]
  /** In the coordinates of the piece. */
  readonly marks: readonly PlacedMark[]
  /** Height of the main word's letter x, measured from the typeface's own outline. */
  readonly xHeightMm?: number
  readonly fontPt?: number
}
