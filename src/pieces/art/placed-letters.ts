import type { PathShape } from '../piece.js'
import type { ShapedRun } from '../typeface/shaped-run.js'

/** Letters as they were shaped, how large an em is, and where their pen began on the baseline. */
export interface PlacedLetters {
  readonly run: ShapedRun
  readonly sizeMm: number
  readonly xMm: number
  readonly yMm: number
  /** Where the outline was written before it was moved: its numbers, which were rounded then, were rounded again. */
  readonly moved?: true
}

/**
 * What shapes of plain letters were drawn from: by it they are known in every size. It is told beside them, for a sheet is plain data,
 * and says with their outlines all that is to be seen.
 */
const drawnFrom = new WeakMap<PathShape, PlacedLetters>()

export function fromLetters(shape: PathShape, letters: PlacedLetters): PathShape {
  drawnFrom.set(shape, letters)
  return shape
}

/** Undefined for what is no text, or not of plain letters alone. */
export function lettersOf(shape: PathShape): PlacedLetters | undefined {
  return drawnFrom.get(shape)
}

/** A shape made of another whose letters it shows, moved by so much. */
export function withLettersOf(other: PathShape, shape: PathShape, xMm = 0, yMm = 0): PathShape {
  const letters = lettersOf(other)
  if (letters === undefined) return shape
  const isMoved = xMm !== 0 || yMm !== 0
  const moved = { ...letters, xMm: letters.xMm + xMm, yMm: letters.yMm + yMm }
  return fromLetters(shape, isMoved ? { ...moved, moved: true } : moved)
}
