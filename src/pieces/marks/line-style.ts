import type { PathCommand } from '../typeface/glyph-outline.js'
import type { InkRules } from './ink-rules.js'
import type { Extent } from './letter-ink.js'

/** A line under letters or through them. */
export interface LineStyle {
  readonly name: string
  /** What it looks like, for `oaktag list lines`. */
  readonly summary: string
  /** From its upper to its lower edge, for a run of `widthMm`. */
  readonly heightMm: (ink: InkRules, widthMm: number) => number
  /** Under the letters, or drawn through them. */
  readonly stands: 'under' | 'through'
  /** Less than this cannot show what line it is. */
  readonly shortestMm: (ink: InkRules) => number
  /** Fills `area`: as high as `heightMm`, or as the letters' own ink for a line through them. */
  readonly draw: (area: Extent, ink: InkRules) => readonly MarkPath[]
}

/** A filled path, or one stroked with `strokeMm`. */
export interface MarkPath {
  readonly commands: readonly PathCommand[]
  readonly strokeMm?: number
  /** The stroke ends square, not round. */
  readonly square?: boolean
}
