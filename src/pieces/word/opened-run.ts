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
    further.set(place, (openings.get(place) ?? 0) + Math.ceil((neededMm / sizeMm) * 1000) / 1000)
  }
  return further
}
