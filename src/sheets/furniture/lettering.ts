/** How furniture gets its words drawn: the typeface is chosen by whoever asks for the sheet. */
import type { Art } from '../../pieces/piece.js'

export interface LineOfText {
  readonly text: string
  /** The em. */
  readonly sizeMm: number
  /** `#rrggbb`; black where left out. */
  readonly color?: string
  readonly weight?: 'regular' | 'bold'
}

/** Draws one line of text; equal lines may share their art. */
export type Lettering = (line: LineOfText) => Art
