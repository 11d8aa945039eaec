/** How furniture gets its words drawn: the typeface is chosen by whoever asks for the sheet. */
import { drawnWhenAsked } from '../../pieces/art/drawn-when-asked.js'
import type { Art } from '../../pieces/piece.js'

export interface LineOfText {
  readonly text: string
  /** The em. */
  readonly sizeMm: number
  /** `#rrggbb`; black where left out. */
  readonly color?: string
  readonly weight?: 'regular' | 'bold'
}

export interface Lettering {
  /** Draws one line of text; equal lines may share their art. */
  (line: LineOfText): Art
  /** How wide it would be: much sooner told than drawn. */
  readonly widthMm: (line: LineOfText) => number
}

/** Drawn, and not said: numbers along a scale or a drawing tell nothing to whoever goes through a page by ear. */
export function unsaid(art: Art): Art {
  const { widthMm, heightMm } = art
  return drawnWhenAsked({ widthMm, heightMm, text: [] }, () => art.shapes)
}
