/**
 * Divisions that the word's parts ask for: compounds between their words, endings and prefixes at their seam. The
 * evidence is always another word that is spelled and sounds alike, so that `hope` has no part in `open`.
 */
import { isVowelSound } from '../alignment/arpabet.js'
import { compoundOf } from './compound-seams.js'
import { listedDivisions } from './exceptions.js'
import { prefixOf } from './prefix-seams.js'
import { isInSeamGroup } from './seam-groups.js'
import { suffixOf } from './suffix-seams.js'
import type { Unit } from './units.js'
import type { Evidence, OtherWords, Part, Seam } from './word-parts.js'

/** The seams of a word, those of its base and of its halves included: un·luck·y, skate·board·ing. */
export function seamsOf(
  word: string,
  units: readonly Unit[],
  others: OtherWords | undefined,
): readonly Seam[] {
  const sounds = units.flatMap(unit => unit.sounds)
  const seams =
    others === undefined ? [] : [...seamsIn({ text: word, start: 0, sounds }, { units, others }, true)]
  // trans·port, trans·late; tran·scribe and tran·sit share their s.
  if (/^trans[bdfglmnpv]/.test(word)) seams.push({ at: 5, rule: 'prefix trans-' })
  return /e[ds]$/.test(word) ? [...seams, ...endingsBySound(word, sounds.join(' '))] : seams
}

function seamsIn(part: Part, evidence: Evidence, isWhole = false): readonly Seam[] {
  if (!isWhole) {
    const listed = listedDivision(part)
    if (listed) return listed
  }
  const suffixed = suffixOf(part, evidence)
  if (suffixed) {
    const { base, seam } = suffixed
    const shared = part.start + lengthOfSharedStart(base.text, part.text)
    const inside = seamsIn(base, evidence).filter(({ at }) => at <= shared)
    return seam ? [...inside, seam] : inside
  }
  const prefixed = prefixOf(part, evidence)
  if (prefixed) return [prefixed.seam, ...seamsIn(prefixed.rest, evidence)]
  const compound = compoundOf(part, evidence)
  if (compound === undefined) return []
  return [...seamsIn(compound.left, evidence), compound.seam, ...seamsIn(compound.right, evidence)]
}

/** A base whose division is listed passes it on: every, everything. */
function listedDivision({ text, start, sounds }: Part): readonly Seam[] | undefined {
  const count = sounds.filter(isVowelSound).length
  const pieces = listedDivisions()
    .get(text)
    ?.find(division => division.length === count)
  if (pieces === undefined) return undefined
  let at = start
  return pieces.slice(0, -1).map(piece => {
    at += piece.length
    return { at, rule: `${text} is listed: the rules would divide otherwise` }
  })
}

/** want·ed and box·es show their ending in letters and sounds alone. */
function endingsBySound(word: string, sounds: string): readonly Seam[] {
  const at = word.length - 2
  if (/[td]ed$/.test(word) && /[TD] (?:IH|AH|EH) D$/.test(sounds))
    return /(?:tt|dd)ed$/.test(word) || isInSeamGroup(word, 'no -ed') ? [] : [{ at, rule: 'ending -ed' }]
  if (/(?:[sxzcg]|[cs]h)es$/.test(word) && /(?:S|Z|SH|ZH|CH|JH) (?:IH|AH|EH) Z$/.test(sounds))
    return /(?:qui|whi|fe)zzes$/.test(word) ? [] : [{ at, rule: 'ending -es' }]
  return []
}

function lengthOfSharedStart(first: string, second: string): number {
  let length = 0
  while (length < first.length && first.charAt(length) === second.charAt(length)) length += 1
  return length
}
