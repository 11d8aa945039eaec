/** A word opened at places: what stands at and after a text index moves to the right, the rest stays as it is. */
import type { ShapedRun } from '../typeface/shaped-run.js'

/** Space in em that is added before the letter at each text index. */
export type Openings = ReadonlyMap<number, number>

export function openedAt(run: ShapedRun, start: number, addedEm: number): ShapedRun {
  return {
    ...run,
    widthEm: run.widthEm + addedEm,
    glyphs: run.glyphs.map(glyph => (glyph.start >= start ? { ...glyph, xEm: glyph.xEm + addedEm } : glyph)),
  }
}

export function openedRun(run: ShapedRun, openings: Openings): ShapedRun {
  let opened = run
  for (const [start, addedEm] of openings) opened = openedAt(opened, start, addedEm)
  return opened
}

/**
 * No place in a word is opened further, or its letters fall apart (our own judgement, no source). Marks keep their white in
 * mm, so the smaller the word the more ems they ask for: two ovals side by side 0.84 at 14 pt in large print, 0.68 in
 * ordinary, one oval half of that. In words smaller than oaktag makes by itself, outlines come nearer to one another
 * instead.
 */
export const MOST_OPENED_EM = 0.9

/** With what is still needed at each place, in mm; of several needs at one place the largest. */
export function openedFurther(
  openings: Openings,
  needs: readonly ReadonlyMap<number, number>[],
  sizeMm: number,
): Openings {
  const further = new Map(openings)
  const places = new Set(needs.flatMap(need => [...need.keys()]))
  for (const place of places) {
    const neededMm = Math.max(...needs.map(need => need.get(place) ?? 0))
    // Up to the next thousandth, so that the last hair of a gap is not asked for again.
    const wishedEm = (openings.get(place) ?? 0) + Math.ceil((neededMm / sizeMm) * 1000) / 1000
    further.set(place, Math.min(wishedEm, MOST_OPENED_EM))
  }
  return further
}
