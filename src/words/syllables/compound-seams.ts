/** The seam between the halves of a compound, and the halves as parts. */
import { halvesOf } from '../compounds/halves.js'
import type { Evidence, Part, Seam } from './word-parts.js'

export function compoundOf(
  part: Part,
  { units, others }: Evidence,
): { left: Part; seam: Seam; right: Part } | undefined {
  const letters = units.filter(
    ({ start, end }) => start >= part.start && end <= part.start + part.text.length,
  )
  const halves = halvesOf({ text: part.text, letters }, others)
  if (halves === undefined) return undefined
  const { first, second } = halves
  const at = part.start + halves.at
  const before = letters.filter(({ end }) => end <= at).flatMap(({ sounds }) => sounds)
  const left = { text: first, start: part.start, sounds: before }
  const right = { text: second, start: at, sounds: part.sounds.slice(before.length) }
  return { left, seam: { at, rule: `compound: ${first} + ${second}` }, right }
}
