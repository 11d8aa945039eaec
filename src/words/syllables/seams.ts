/**
 * Divisions that the word's parts ask for: compounds between their words, endings and prefixes at their seam. The
 * evidence is always another word that is spelled and sounds alike, so that `hope` has no part in `open`.
 */
import { compoundOf } from './compound-seams.js'
import { prefixOf } from './prefix-seams.js'
import { isInSeamGroup } from './seam-groups.js'
import { suffixOf } from './suffix-seams.js'
import type { Unit } from './units.js'
import { type Evidence, type Part, type Seam, saidAs } from './word-parts.js'

/** The seams of a word, those of its base and of its halves included: un·luck·y, skate·board·ing. */
export function seamsOf(
  word: string,
  units: readonly Unit[],
  evidence: Omit<Evidence, 'units'> | undefined,
): readonly Seam[] {
  const sounds = units.flatMap(unit => unit.sounds)
  const seams =
    evidence === undefined ? [] : [...seamsIn({ text: word, start: 0, sounds }, { units, ...evidence })]
  // trans·port, trans·late; tran·scribe and tran·sit share their s.
  if (/^trans[bdfglmnpv]/.test(word)) seams.push({ at: 5, rule: 'prefix trans-' })
  const scope = /^.{3,}[aeio](?=scop(?:es?|ic)$)/.exec(word)?.[0]
  if (scope !== undefined) seams.push({ at: scope.length, rule: 'scope stays whole' })
  return /(?:e[ds]|ing)$/.test(word) ? [...seams, ...endingsBySound(word, sounds.join(' '))] : seams
}

function seamsIn(part: Part, evidence: Evidence): readonly Seam[] {
  const suffixed = suffixOf(part, evidence)
  if (suffixed) {
    const { base, seam } = suffixed
    const shared = part.start + lengthOfSharedStart(base.text, part.text)
    const inside = seamsOfBase(base, evidence).filter(({ at }) => at <= shared)
    return seam ? [...inside, seam] : inside
  }
  const prefixed = prefixOf(part, evidence)
  if (prefixed) return [prefixed.seam, ...seamsOfBase(prefixed.rest, evidence)]
  const compound = compoundOf(part, evidence)
  if (compound === undefined) return []
  return [...seamsOfBase(compound.left, evidence), compound.seam, ...seamsOfBase(compound.right, evidence)]
}

/** A base divides as it does alone and passes its division on: every in everything, guitar in guitarist. */
function seamsOfBase(base: Part, evidence: Evidence): readonly Seam[] {
  const { others, divisionsIn } = evidence
  const pronunciation = saidAs(base.text, base.sounds, others) ?? others.pronunciationsOf(base.text)[0]
  if (pronunciation === undefined) return seamsIn(base, evidence)
  return divisionsIn(base.text, pronunciation).map(({ at, rule }) => ({ at: base.start + at, rule }))
}

/** want·ed, box·es and act·ing show their ending in letters and sounds alone. */
function endingsBySound(word: string, sounds: string): readonly Seam[] {
  const at = word.length - 2
  if (/[td]ed$/.test(word) && /[TD] (?:IH|AH|EH) D$/.test(sounds))
    return /(?:tt|dd)ed$/.test(word) || isInSeamGroup(word, 'no -ed') ? [] : [{ at, rule: 'ending -ed' }]
  if (/(?:[sxzcg]|[cs]h)es$/.test(word) && /(?:S|Z|SH|ZH|CH|JH) (?:IH|AH|EH) Z$/.test(sounds))
    return /(?:qui|whi|fe)zzes$/.test(word) ? [] : [{ at, rule: 'ending -es' }]
  // con·duct·ing, im·pend·ing: after two consonants that are no pair (hop·ping) and no le (han·dling).
  const stem = word.slice(0, -3)
  const showsIng = /[^aeiouy][^aeiouyl]$/.test(stem) && !/([^aeiouy])\1$/.test(stem) && / IH NG$/.test(sounds)
  return showsIng && !isInSeamGroup(word, 'no -ing') ? [{ at: at - 1, rule: 'ending -ing' }] : []
}

function lengthOfSharedStart(first: string, second: string): number {
  let length = 0
  while (length < first.length && first.charAt(length) === second.charAt(length)) length += 1
  return length
}
