import type { PathCommand } from '../typeface/glyph-outline.js'
import type { Extent } from './letter-ink.js'

/** A closed line around letters. */
export interface OutlineStyle {
  readonly name: string
  /** What it looks like, for `oaktag list outlines`. */
  readonly summary: string
  /** How much farther out than needed its sides stand, so that it can bulge, in em. */
  readonly bulgeEm: number
  /** How far in from the straight side of `frame` its line stands at height `y` (0 on a straight side). */
  readonly inset: (frame: OutlineFrame, y: number) => number
  /** The middle of its stroke. */
  readonly draw: (frame: OutlineFrame) => readonly PathCommand[]
}

/** The rectangle that the middle of the stroke touches on all four sides. */
export interface OutlineFrame extends Extent {
  /** The em, in mm: corners grow with the type. */
  readonly sizeMm: number
}
