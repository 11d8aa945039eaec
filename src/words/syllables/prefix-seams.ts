/** Prefixes before a word that keeps its sounds. */
import { byLetter } from '../by-letter.js'
import { isInSeamGroup } from './seam-groups.js'
import { type Evidence, familiarEnough, isSaid, type Part, type Seam } from './word-parts.js'

/** A prefix with the sounds it opens the word with. */
const prefixes: readonly { readonly letters: string; readonly sounds: RegExp }[] = Object.entries({
  un: /^AH N$/,
  re: /^R (?:IY|IH|AH)$/,
  dis: /^D IH S$/,
  mis: /^M IH S$/,
  pre: /^P R (?:IY|IH|AH)$/,
  in: /^IH N$/,
  im: /^IH M$/,
  non: /^N AA N$/,
  over: /^OW V ER$/,
  under: /^AH N D ER$/,
  sub: /^S AH B$/,
  out: /^AW T$/,
  up: /^AH P$/,
  fore: /^F AO R$/,
  ex: /^(?:IH|EH) (?:K S|G Z)$/,
  en: /^(?:IH|EH) N$/,
  a: /^AH$/,
  be: /^B (?:IH|IY|AH)$/,
  de: /^D (?:IY|IH|AH)$/,
  mid: /^M IH D$/,
  inter: /^IH N T ER$/,
  super: /^S UW P ER$/,
  trans: /^T R AE N [SZ]$/,
  self: /^S EH L F$/,
  anti: /^AE N T (?:IY|AY)$/,
  semi: /^S EH M (?:IY|AY)$/,
  bi: /^B AY$/,
  tri: /^T R AY$/,
}).map(([letters, sounds]) => ({ letters, sounds }))

const prefixesByFirst = byLetter(prefixes, ({ letters }) => letters[0]!)

export function prefixOf(part: Part, { units, others }: Evidence): { seam: Seam; rest: Part } | undefined {
  for (const { letters, sounds } of prefixesByFirst.get(part.text[0]!) ?? []) {
    if (!part.text.startsWith(letters) || part.text.length < letters.length + 3) continue
    if (isInSeamGroup(part.text, 'no prefix')) return undefined
    const at = part.start + letters.length
    if (!units.some(unit => unit.start === at)) continue
    const base = part.text.slice(letters.length)
    if (others.familiarity(base) < familiarEnough) continue
    const opening = units
      .filter(unit => unit.start >= part.start && unit.end <= at)
      .flatMap(unit => unit.sounds)
    const rest = part.sounds.slice(opening.length)
    if (!sounds.test(opening.join(' ')) || !isSaid(base, rest, others)) continue
    return { seam: { at, rule: `prefix ${letters}-` }, rest: { text: base, start: at, sounds: rest } }
  }
  return undefined
}
