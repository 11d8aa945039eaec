import type { InkRules } from './ink-rules.js'
import { around, type Extent, inkBetween, type LetterInk } from './letter-ink.js'
import type { OutlineFrame, OutlineStyle } from './outline-style.js'

export interface OutlinePlacement {
  readonly frame: OutlineFrame
  /** What has to be added between all letters, in mm, for the outline to keep off its neighbours; 0 where nothing. */
  readonly neededMm: number
}

export interface OutlineSurroundings {
  /** Letters that are not inside, and how many gaps between letters lie between each and the outline. */
  readonly outside: readonly LetterInk[]
  /** Marks on other letters: what they take up, and their letters. */
  readonly marks: readonly (Extent & { readonly start: number; readonly end: number })[]
  readonly ink: InkRules
  readonly sizeMm: number
}

/** Letters and marks to be enclosed. */
export interface Enclosed {
  readonly letters: readonly LetterInk[]
  readonly marks: readonly Extent[]
  readonly start: number
  readonly end: number
}

/** The outline that hugs what it encloses, grown up and down until its corners are clear. */
export function placeOutline(
  style: OutlineStyle,
  enclosed: Enclosed,
  surroundings: OutlineSurroundings,
): OutlinePlacement {
  const { ink, sizeMm } = surroundings
  const reach = ink.gapMm + ink.strokeMm / 2
  const inner = around([...enclosed.letters, ...enclosed.marks])!
  const side = reach + style.bulgeEm * sizeMm
  let frame: OutlineFrame = {
    left: inner.left - side,
    right: inner.right + side,
    top: inner.top - reach,
    bottom: inner.bottom + reach,
    sizeMm,
  }
  const step = 0.02 * sizeMm
  for (let grown = 0; grown < 60; grown++) {
    const { above, below } = cornersCut(style, frame, enclosed, reach)
    if (!above && !below) break
    frame = { ...frame, top: frame.top - (above ? step : 0), bottom: frame.bottom + (below ? step : 0) }
  }
  return { frame, neededMm: spaceNeeded(style, frame, enclosed, surroundings) }
}

/** Points on a quarter turn: how far up or down, and how far out, a stroke keeps its distance. */
const quarterTurn = [0, 0.25, 0.5, 0.75, 0.9, 1].map(rise => ({ rise, run: Math.sqrt(1 - rise ** 2) }))

/** Whether the line comes nearer than `reach` to what it encloses, above or below its own middle. */
function cornersCut(
  style: OutlineStyle,
  frame: OutlineFrame,
  enclosed: Enclosed,
  reach: number,
): { readonly above: boolean; readonly below: boolean } {
  const middle = (frame.top + frame.bottom) / 2
  let [above, below] = [false, false]
  const look = (y: number, left: number, right: number): void => {
    for (const { rise, run } of quarterTurn) {
      const at = y + (y < middle ? -1 : 1) * rise * reach
      if (at <= frame.top || at >= frame.bottom) continue
      const inset = style.inset(frame, at)
      const cut =
        left - run * reach < frame.left + inset - 1e-6 || right + run * reach > frame.right - inset + 1e-6
      if (cut && y < middle) above = true
      if (cut && y >= middle) below = true
    }
  }
  for (const letter of enclosed.letters)
    letter.rows.forEach((row, index) => {
      if (row.left <= row.right) look((letter.firstRow + index + 0.5) * letter.rowMm, row.left, row.right)
    })
  for (const mark of enclosed.marks) {
    look(mark.top, mark.left, mark.right)
    look(mark.bottom, mark.left, mark.right)
  }
  return { above, below }
}

/** How far the neighbours have to move away, shared out over the gaps between. */
function spaceNeeded(
  style: OutlineStyle,
  frame: OutlineFrame,
  enclosed: Enclosed,
  { outside, marks, ink }: OutlineSurroundings,
): number {
  // A hundredth of a millimetre to spare, so that a line that ends at a neighbour's ink finds the gap it asks for.
  const reach = ink.gapMm + ink.strokeMm / 2 + 0.01
  let needed = 0
  for (const letter of outside) {
    const before = letter.end <= enclosed.start
    const gaps = before ? enclosed.start - letter.end + 1 : letter.start - enclosed.end + 1
    for (let y = frame.top - reach; y <= frame.bottom + reach; y += letter.rowMm) {
      const row = inkBetween(letter, y, y)
      if (row === undefined) continue
      const inset = leastInset(style, frame, y, reach)
      const overlap = before
        ? row.right + reach - (frame.left + inset)
        : frame.right - inset - (row.left - reach)
      needed = Math.max(needed, overlap / gaps)
    }
  }
  for (const mark of marks) {
    if (mark.bottom + reach < frame.top || mark.top - reach > frame.bottom) continue
    const before = mark.end <= enclosed.start
    const gaps = before ? enclosed.start - mark.end + 1 : mark.start - enclosed.end + 1
    const overlap = before ? mark.right + reach - frame.left : frame.right - (mark.left - reach)
    needed = Math.max(needed, overlap / gaps)
  }
  return needed
}

/** The least inset of the line within reach of height `y`: past its ends, a neighbour meets its edge there. */
function leastInset(style: OutlineStyle, frame: OutlineFrame, y: number, reach: number): number {
  const heights = [y - reach, y - reach / 2, y, y + reach / 2, y + reach].map(height =>
    Math.min(frame.bottom, Math.max(frame.top, height)),
  )
  return Math.min(...heights.map(height => style.inset(frame, height)))
}
