import type { Size } from '../../geometry.js'
import type { TextRun } from '../piece.js'

/** Layouts are made in whole units: a text may stand this far over an edge without being cut off there. */
const ROUNDING_MM = 0.3

/** The lines of text that stand beyond an edge of their face, where they would be cut off or run into others. */
export function textOffFace(text: readonly TextRun[], { widthMm, heightMm }: Size): readonly TextRun[] {
  return text.filter(run => {
    const right = run.xMm + run.widthMm
    // Letters reach about three quarters of the em up from the baseline, and a fifth down.
    const [top, bottom] = [run.baselineMm - run.sizeMm * 0.75, run.baselineMm + run.sizeMm * 0.2]
    return Math.min(run.xMm, top, widthMm - right, heightMm - bottom) < -ROUNDING_MM
  })
}
