import type { InkRules } from './ink-rules.js'
import { around, type Extent, type LetterInk } from './letter-ink.js'
import { type FrameStyle, type Inset, type OutlineFrame, outlineAir } from './outline-style.js'

export interface OutlinePlacement {
  readonly frame: OutlineFrame
  /** What has to be added at its two edges, in mm, for the outline to keep off its neighbours; 0 where nothing. */
  readonly needed: EdgeRoom
}

export interface EdgeRoom {
  readonly beforeMm: number
  readonly afterMm: number
}

export interface OutlineSurroundings {
  /** Letters that are not inside, and how many gaps between letters lie between each and the outline. */
  readonly outside: readonly LetterInk[]
  /** Marks on other letters: what they take up, and their letters. */
  readonly marks: readonly MarkOutside[]
  readonly ink: InkRules
  readonly sizeMm: number
}

export interface MarkOutside extends Extent {
  readonly start: number
  readonly end: number
  /** White to keep from it. */
  readonly awayMm: number
}

/** Letters and marks to be enclosed. */
export interface Enclosed {
  readonly letters: readonly LetterInk[]
  /** Marks of its own, and others grown by what they keep away from it. */
  readonly marks: readonly Extent[]
  readonly start: number
  readonly end: number
}

/** The outline that hugs what it encloses, grown up and down until its corners are clear. */
export function placeOutline(
  style: FrameStyle,
  enclosed: Enclosed,
  surroundings: OutlineSurroundings,
): OutlinePlacement {
  const { ink, sizeMm } = surroundings
  const reach = outlineAir * ink.gapMm + ink.strokeMm / 2
  const inner = around([...enclosed.letters, ...enclosed.marks])!
  const side = reach + style.bulgeEm * sizeMm
  const points = pointsAround(slicesOf(enclosed, sizeMm), reach)
  const grown = (above: number, below: number): OutlineFrame => ({
    left: inner.left - side,
    right: inner.right + side,
    top: inner.top - reach - (airEm + above * growthEm) * sizeMm,
    bottom: inner.bottom + reach + (airEm + below * growthEm) * sizeMm,
    sizeMm,
  })
  const clear = (above: number, below: number): boolean => !cutsCorners(style, grown(above, below), points)
  const both = least(mostGrowth, steps => clear(steps, steps))
  const above = least(both, steps => clear(steps, both))
  const below = least(both, steps => clear(above, steps))
  const frame = grown(above, below)
  return { frame, needed: spaceNeeded(style, frame, enclosed, surroundings) }
}

/** Above and below there is room for a little more air than a gap. */
const airEm = 0.025

/** Outlines grow in steps of a fiftieth of an em, up to one em either way. */
const growthEm = 0.02
const mostGrowth = 50

/** The least of 0 … `most` for which `holds`; `most` where none below it does. */
function least(most: number, holds: (steps: number) => boolean): number {
  if (holds(0)) return 0
  let [failing, holding] = [0, most]
  while (holding - failing > 1) {
    const middle = Math.floor((failing + holding) / 2)
    if (holds(middle)) holding = middle
    else failing = middle
  }
  return holding
}

/** How far what is enclosed reaches to either side at one height. */
interface Slice {
  readonly y: number
  readonly left: number
  readonly right: number
}

const sliceEm = 1 / 64

function slicesOf({ letters, marks }: Enclosed, sizeMm: number): readonly Slice[] {
  const slices = new Map<number, { readonly y: number; left: number; right: number }>()
  const add = (y: number, left: number, right: number): void => {
    const index = Math.round(y / (sliceEm * sizeMm))
    const known = slices.get(index)
    if (known === undefined) slices.set(index, { y: index * sliceEm * sizeMm, left, right })
    else {
      known.left = Math.min(left, known.left)
      known.right = Math.max(right, known.right)
    }
  }
  for (const { rowCount, rowAt, firstRow, rowMm } of letters)
    for (let index = 0; index < rowCount; index++) {
      const { left, right } = rowAt(index)
      if (left <= right) add((firstRow + index + 0.5) * rowMm, left, right)
    }
  for (const mark of marks) for (const y of [mark.top, mark.bottom]) add(y, mark.left, mark.right)
  return [...slices.values()]
}

/** Points on a quarter turn: how far up or down, and how far out, a stroke keeps its distance. */
const quarterTurn = [0, 0.4, 0.75, 1].map(rise => ({ rise, run: Math.sqrt(1 - rise ** 2) }))

/** Where a line at `reach` from a slice's ends may stand, at a height nearer to the outline's end by `rise`. */
interface Point {
  readonly y: number
  readonly rise: number
  readonly left: number
  readonly right: number
}

function pointsAround(slices: readonly Slice[], reach: number): readonly Point[] {
  const points: Point[] = []
  for (const { y, left, right } of slices)
    for (const { rise, run } of quarterTurn)
      points.push({ y, rise: rise * reach, left: left - run * reach, right: right + run * reach })
  return points
}

/** Whether the line passes inside one of the points; asked for many frames around the same ones. */
function cutsCorners(style: FrameStyle, frame: OutlineFrame, points: readonly Point[]): boolean {
  const { top, bottom, left, right } = frame
  const middle = (top + bottom) / 2
  const inset = style.insetOf(frame)
  for (const point of points) {
    const at = point.y < middle ? point.y - point.rise : point.y + point.rise
    if (at <= top || at >= bottom) continue
    const mostMm = inset.atMost(at)
    if (point.left >= left + mostMm && point.right <= right - mostMm) continue
    const insetMm = inset.at(at)
    if (point.left < left + insetMm - 1e-6 || point.right > right - insetMm + 1e-6) return true
  }
  return false
}

/** How far the neighbours on either side have to move away. */
function spaceNeeded(
  style: FrameStyle,
  frame: OutlineFrame,
  enclosed: Enclosed,
  { outside, marks, ink }: OutlineSurroundings,
): EdgeRoom {
  // A hundredth of a millimetre to spare, so that a line that ends at a neighbour's ink finds the gap it asks for.
  const reach = outlineAir * ink.gapMm + ink.strokeMm / 2 + 0.01
  const inset = style.insetOf(frame)
  let [beforeMm, afterMm] = [0, 0]
  const need = (before: boolean, mm: number): void => {
    if (before) beforeMm = Math.max(beforeMm, mm)
    else afterMm = Math.max(afterMm, mm)
  }
  for (const letter of outside) {
    const before = letter.end <= enclosed.start
    const between = before ? enclosed.start - letter.end : letter.start - enclosed.end
    // Letters farther off than the next two cannot reach so far.
    if (between > 1) continue
    for (let index = 0; index < letter.rowCount; index++) {
      const y = (letter.firstRow + index + 0.5) * letter.rowMm
      if (y < frame.top - reach || y > frame.bottom + reach) continue
      const row = letter.rowAt(index)
      if (row.left > row.right) continue
      const insetMm = leastInset(inset, frame, y, reach)
      need(
        before,
        before ? row.right + reach - (frame.left + insetMm) : frame.right - insetMm - (row.left - reach),
      )
    }
  }
  for (const mark of marks) {
    const markReach = mark.awayMm + ink.strokeMm / 2 + 0.01
    if (mark.bottom + markReach < frame.top || mark.top - markReach > frame.bottom) continue
    const before = mark.end <= enclosed.start
    need(before, before ? mark.right + markReach - frame.left : frame.right - (mark.left - markReach))
  }
  return { beforeMm, afterMm }
}

/** The least inset of the line within reach of height `y`: lines bulge most at their middle. */
function leastInset(inset: Inset, frame: OutlineFrame, y: number, reach: number): number {
  const middle = (frame.top + frame.bottom) / 2
  const nearest = Math.min(y + reach, Math.max(y - reach, middle))
  return inset.at(Math.min(frame.bottom, Math.max(frame.top, nearest)))
}
