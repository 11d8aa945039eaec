import type { PathCommand } from '../typeface/glyph-outline.js'
import type { Extent } from './letter-ink.js'

/** How letters are set apart by their own outline: a line around them, or their own shape drawn otherwise. */
export type OutlineStyle = FrameStyle | LetterStyle

/** Letters drawn otherwise than their neighbours. */
export interface LetterStyle {
  readonly kind: 'letters'
  readonly name: string
  readonly summary: string
  readonly paint: 'hollow' | 'heavy'
}

/** White on both sides of an outline, in gaps: half as much again as a line keeps from ink. */
export const outlineAir = 1.5

/** A closed line around letters. */
export interface FrameStyle {
  readonly kind: 'frame'
  readonly name: string
  /** What it looks like, for `oaktag list outlines`. */
  readonly summary: string
  /** How much farther out than needed its sides stand, so that it can bulge, in em. */
  readonly bulgeEm: number
  /** How far in from the straight sides of a frame its line stands. */
  readonly insetOf: (frame: OutlineFrame) => Inset
  /** The middle of its stroke. */
  readonly draw: (frame: OutlineFrame) => readonly PathCommand[]
}

export interface Inset {
  /** At height `y`; 0 on a straight side. */
  readonly at: (y: number) => number
  /** At height `y` at most so much: sooner known where `at` takes long. */
  readonly atMost: (y: number) => number
}

/** The rectangle that the middle of the stroke touches on all four sides. */
export interface OutlineFrame extends Extent {
  /** The em, in mm: corners grow with the type. */
  readonly sizeMm: number
}
