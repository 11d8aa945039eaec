/** How a vowel-beginning ending (-ed, -ing, -er, -est, -y) joins a base. The rules are common practice, no source. */
import { lazily } from '../../lazily.js'
import { wordsOf } from '../tables/installed-tables.js'

export type JoiningRule =
  | 'add'
  | 'drop e'
  | 'double the last letter'
  | 'y to i'
  | 'ie to y'
  | 'add k'
  | 'changes inside'

export interface Joined {
  readonly form: string
  readonly rule: JoiningRule
}

/**
 * Joins an ending that begins with a vowel letter to a lower-case base. `pronunciation` (ARPABET with stress) tells
 * whether the last syllable of a longer base is stressed: begin·ning, but open·ing.
 */
export function join(base: string, ending: string, pronunciation?: string): Joined {
  const withI = ending.startsWith('i')
  if (withI && /[^aeiou]ie$/.test(base)) return { form: `${base.slice(0, -2)}y${ending}`, rule: 'ie to y' }
  if (base.endsWith('e') && !(withI && keepsItsE(base)))
    return { form: base.slice(0, -1) + ending, rule: 'drop e' }
  if (!withI && /(?:[^aeiou]|qu)y$/.test(base))
    return { form: `${base.slice(0, -1)}i${ending}`, rule: 'y to i' }
  if (/[aeiou]c$/.test(base) && base.length > 3) return { form: `${base}k${ending}`, rule: 'add k' }
  if (doubles(base, pronunciation))
    return { form: base + base.slice(-1) + ending, rule: 'double the last letter' }
  return { form: base + ending, rule: 'add' }
}

/** see·ing, dye·ing, tiptoe·ing, singe·ing (as against sing·ing). */
function keepsItsE(base: string): boolean {
  return /(?:ee|oe|ye)$/.test(base) || base === 'singe' || base === 'be' || base === 'tinge'
}

/** Longer words that double their last letter whatever their pronunciation says. */
const doublesByName = lazily(() => new Set(wordsOf('endings/doubling')))

/** One vowel letter, then one consonant letter other than w, x, y, in a stressed last syllable. */
function doubles(base: string, pronunciation: string | undefined): boolean {
  if (!/(?:^|[^aeiou]|qu)[aeiouy][^aeiouwxy]$/.test(base)) return false
  if (/^[^aeiouy]*(?:qu)?[aeiouy][^aeiouwxy]$/.test(base)) return base !== 'bus'
  if (doublesByName().has(base)) return true
  return pronunciation !== undefined && lastVowelIsStressed(pronunciation) && /[bdgklmnprt]$/.test(base)
}

function lastVowelIsStressed(pronunciation: string): boolean {
  const stresses = pronunciation.match(/\d/g)
  return stresses !== null && stresses.length > 1 && stresses[stresses.length - 1] === '1'
}
