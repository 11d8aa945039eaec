import type { Box } from '../../src/geometry.js'
import { moveArt } from '../../src/pieces/art/move-art.js'
import type { Art } from '../../src/pieces/piece.js'
import { linesHeight, type TextMeasure } from '../../src/pieces/text/break-lines.js'
import { drawTextLine } from '../../src/pieces/text/text-line.js'
import type { Typeface } from '../../src/pieces/typeface/typeface.js'
import type { Jump } from '../../src/sets/games/track-turns.js'

/** What stands at the foot of a space: its number and, behind it, where it sends a counter. */
export interface SpaceLabels {
  readonly sizeMm: number
  /** By the number of its space. */
  readonly sends: ReadonlyMap<number, string>
}

/** From a space's frame to what is written along it. */
const INSET_MM = 1.8

type Wording = (jump: Jump) => string

/** The longest first. */
const wordings: readonly Wording[] = [
  ({ from, to }) => `${to > from ? 'go on to' : 'go back to'} ${to}`,
  ({ from, to }) => `${to > from ? 'on to' : 'back to'} ${to}`,
  ({ to }) => `to ${to}`,
]

/** Between the number and what follows it, in em. */
const GAP_EM = 0.6

/** One wording for all of a board; the shortest, too wide though it may be, where none has room. */
export function spaceLabels(
  jumps: readonly Jump[],
  {
    sizeMm,
    widthMm,
    measure,
  }: { readonly sizeMm: number; readonly widthMm: number; readonly measure: TextMeasure },
): SpaceLabels {
  const fits = (say: Wording) =>
    jumps.every(
      jump => measure(say(jump), sizeMm, 700) <= roomBehindNumber(jump.from, { sizeMm, widthMm, measure }),
    )
  const say = wordings.find(fits) ?? wordings.at(-1)!
  return { sizeMm, sends: new Map(jumps.map(jump => [jump.from, say(jump)])) }
}

export function roomBehindNumber(
  space: number,
  {
    sizeMm,
    widthMm,
    measure,
  }: { readonly sizeMm: number; readonly widthMm: number; readonly measure: TextMeasure },
): number {
  return widthMm - 2 * INSET_MM - measure(String(space), sizeMm) - GAP_EM * sizeMm
}

/** Taken from a space's height at its foot. */
export function labelHeight({ sizeMm }: SpaceLabels): number {
  return linesHeight(1, sizeMm) + INSET_MM
}

/** The number and the label of the space, in the coordinates of its track. */
export function drawSpaceLabels(
  { sizeMm, sends }: SpaceLabels,
  space: number,
  box: Box,
  typeface: Typeface,
): readonly Art[] {
  const number = drawTextLine({ typeface, text: String(space), sizeMm, color: '#404040' }).art
  const label = sends.get(space)
  const room = { widthMm: box.xMm + box.widthMm, heightMm: box.yMm + box.heightMm }
  const footMm = box.yMm + box.heightMm - INSET_MM / 2 - number.heightMm
  const placed = [moveArt(number, box.xMm + INSET_MM, footMm, room)]
  if (label === undefined) return placed
  const { art } = drawTextLine({ typeface, text: label, sizeMm, weight: 'bold' })
  return [...placed, moveArt(art, box.xMm + box.widthMm - INSET_MM - art.widthMm, footMm, room)]
}
