import type { PathCommand } from '../typeface/glyph-outline.js'
import type { InkRules } from './ink-rules.js'
import { areNear, around, comesNear, type Extent, type LetterInk } from './letter-ink.js'

export interface Link extends Extent {
  readonly commands: readonly PathCommand[]
}

/** What joins the two ends of a split pattern; the first where the teacher does not say. */
export const linkNames = ['bracket', 'arc'] as const
export type LinkShape = (typeof linkNames)[number]

export interface LinkSurroundings {
  readonly letters: readonly LetterInk[]
  readonly marks: readonly Extent[]
  readonly ink: InkRules
  readonly sizeMm: number
  readonly shape: LinkShape
}

/** How deep the first try hangs, in em: a bracket's corners are told from a line's end at a glance. */
const firstEm: Readonly<Record<LinkShape, number>> = { bracket: 0.1, arc: 0.17 }
/** How much deeper the next try hangs, in em. */
const stepEm = 0.025
const mostTries = 40

/** Joins the two ends of a split pattern, from under one mark to under the other. */
export function placeLink(ends: readonly [Extent, Extent], surroundings: LinkSurroundings): Link {
  const { letters, marks, ink, sizeMm, shape } = surroundings
  // Ink is known by rows a hundred and twenty-eighth of an em high: one row to spare.
  const [from, to] = ends.map(end => ({
    x: (end.left + end.right) / 2,
    y: end.bottom + ink.gapMm + ink.strokeMm / 2 + 0.01 * sizeMm,
  })) as [Point, Point]
  const drawn = shape === 'arc' ? arcOf : bracketOf
  let offLetters: Link | undefined
  for (let tries = 0; tries < mostTries; tries++) {
    const { link, beads } = drawn(from, to, (firstEm[shape] + tries * stepEm) * sizeMm, ink.strokeMm)
    if (beads.some(bead => letters.some(letter => comesNear(letter, bead, ink.gapMm)))) continue
    if (!beads.some(bead => marks.some(mark => areNear(mark, bead, ink.apartMm * 0.99)))) return link
    offLetters ??= link
  }
  // None is clear of all marks: off the letters is what counts.
  return offLetters ?? drawn(from, to, firstEm[shape] * sizeMm, ink.strokeMm).link
}

interface Point {
  readonly x: number
  readonly y: number
}

interface Try {
  readonly link: Link
  /** The ink in small pieces, to be held against letters and marks. */
  readonly beads: readonly Extent[]
}

/** Down, straight across, and up again, with square corners. */
function bracketOf(from: Point, to: Point, depth: number, strokeMm: number): Try {
  const low = Math.max(from.y, to.y) + depth
  const corners = [from, { x: from.x, y: low }, { x: to.x, y: low }, to]
  const half = strokeMm / 2
  const beads = corners.slice(1).map((corner, index) => {
    const before = corners[index]!
    return {
      left: Math.min(before.x, corner.x) - half,
      right: Math.max(before.x, corner.x) + half,
      top: Math.min(before.y, corner.y) - half,
      bottom: Math.max(before.y, corner.y) + half,
    }
  })
  const commands = corners.map(
    ({ x, y }, index): PathCommand => ({ type: index === 0 ? 'M' : 'L', values: [x, y] }),
  )
  return { beads, link: { commands, ...around(beads)! } }
}

function arcOf(from: Point, to: Point, depth: number, strokeMm: number): Try {
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
