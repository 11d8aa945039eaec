/** Compounds: two words that keep their sounds, the second said with some stress. */
import { isInSeamGroup } from './seam-groups.js'
import type { Unit } from './units.js'
import { type Evidence, familiarEnough, isSaid, type Part, type Seam } from './word-parts.js'

export function halvesOf(
  part: Part,
  { units, others }: Evidence,
): { left: Part; seam: Seam; right: Part } | undefined {
  if (part.text.length < 6 || isInSeamGroup(part.text, 'no compound')) return undefined
  const inside = units.filter(unit => unit.start >= part.start && unit.end <= part.start + part.text.length)
  const hasVowel = (unit: Unit) => unit.kind === 'vowel' || unit.kind === 'syllabic'
  const firstVowel = inside.find(hasVowel)
  const lastStressed = inside.findLast(unit => hasVowel(unit) && (unit.stress ?? 1) > 0)
  if (firstVowel === undefined || lastStressed === undefined) return undefined
  for (const { start: at } of inside) {
    // Each half has a vowel, and the second is not said weakly.
    if (at < firstVowel.end || at > lastStressed.start) continue
    const leftText = part.text.slice(0, at - part.start)
    const rightText = part.text.slice(at - part.start)
    if (rightText.length < 3 || (leftText.length < 3 && !/^(?:up|in|on)$/.test(leftText))) continue
    if (others.familiarity(leftText) < familiarEnough || others.familiarity(rightText) < familiarEnough)
      continue
    const sounds = inside.filter(unit => unit.end <= at).flatMap(unit => unit.sounds)
    const left = { text: leftText, start: part.start, sounds }
    const right = { text: rightText, start: at, sounds: part.sounds.slice(sounds.length) }
    if (isInSeamGroup(rightText, 'no half')) continue
    if (isSaid(leftText, left.sounds, others) && isSaid(rightText, right.sounds, others))
      return { left, seam: { at, rule: `compound: ${leftText} + ${rightText}` }, right }
  }
  return undefined
}
