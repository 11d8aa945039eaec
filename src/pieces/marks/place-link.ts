import type { PathCommand } from '../typeface/glyph-outline.js'
import type { InkRules } from './ink-rules.js'
import { areNear, around, comesNear, type Extent, type LetterInk } from './letter-ink.js'

export interface Link extends Extent {
  readonly commands: readonly PathCommand[]
}

/** How deep the first try hangs, and how much deeper the next one, in em. */
const sagEm = 0.17
const stepEm = 0.025

/** The arc that joins the two ends of a split pattern, from under one mark to under the other. */
export function placeLink(ends: readonly [Extent, Extent], surroundings: LinkSurroundings): Link {
  const { letters, marks, ink, sizeMm } = surroundings
  // Ink is known by rows a hundred and twenty-eighth of an em high: one row to spare.
  const [from, to] = ends.map(end => ({
    x: (end.left + end.right) / 2,
    y: end.bottom + ink.gapMm + ink.strokeMm / 2 + 0.01 * sizeMm,
  })) as [Point, Point]
  let offLetters: Link | undefined
  for (let tries = 0; tries < mostTries; tries++) {
    const { link, beads } = arcOf(from, to, (sagEm + tries * stepEm) * sizeMm, ink.strokeMm)
    if (beads.some(bead => letters.some(letter => comesNear(letter, bead, ink.gapMm)))) continue
    if (!beads.some(bead => marks.some(mark => areNear(mark, bead, ink.gapMm * 0.99)))) return link
    offLetters ??= link
  }
  // No arc is clear of all marks: off the letters is what counts.
  return offLetters ?? arcOf(from, to, sagEm * sizeMm, ink.strokeMm).link
}

export interface LinkSurroundings {
  readonly letters: readonly LetterInk[]
  readonly marks: readonly Extent[]
  readonly ink: InkRules
  readonly sizeMm: number
}

const mostTries = 40

function arcOf(
  from: Point,
  to: Point,
  depth: number,
  strokeMm: number,
): { readonly link: Link; readonly beads: readonly Extent[] } {
  const low = Math.max(from.y, to.y) + depth
  const lean = (to.x - from.x) * 0.12
  // The middle of a cubic reaches three quarters of the way to its handles.
  const curve: Curve = [
    from,
    { x: from.x + lean, y: from.y + ((low - from.y) * 4) / 3 },
    { x: to.x - lean, y: to.y + ((low - to.y) * 4) / 3 },
    to,
  ]
  const beads = beadsOf(curve, strokeMm / 2)
  const commands: readonly PathCommand[] = [
    { type: 'M', values: [from.x, from.y] },
    { type: 'C', values: curve.slice(1).flatMap(({ x, y }) => [x, y]) },
  ]
  return { beads, link: { commands, ...around(beads)! } }
}

interface Point {
  readonly x: number
  readonly y: number
}

type Curve = readonly [Point, Point, Point, Point]

/** Small squares along the curve, as wide as its stroke. */
function beadsOf([p0, p1, p2, p3]: Curve, radius: number): readonly Extent[] {
  return Array.from({ length: 33 }, (_, index) => {
    const t = index / 32
    const at = (axis: 'x' | 'y'): number =>
      (1 - t) ** 3 * p0[axis] +
      3 * (1 - t) ** 2 * t * p1[axis] +
      3 * (1 - t) * t ** 2 * p2[axis] +
      t ** 3 * p3[axis]
    const [x, y] = [at('x'), at('y')]
    return { left: x - radius, right: x + radius, top: y - radius, bottom: y + radius }
  })
}
