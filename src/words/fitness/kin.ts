/** The words that belong to a word: itself with its endings, and those that WordNet derives from it. Build time. */
import { lazily } from '../../lazily.js'
import { join } from '../endings/adding.js'
import { irregularPlurals } from '../endings/irregular-plurals.js'
import { sFormOf } from '../endings/verb-endings.js'
import { readDerivations } from '../parts-of-speech/wordnet.js'

const derivations = lazily(readDerivations)

/** The caller keeps those that are words. */
export function withKin(bases: Iterable<string>): Set<string> {
  const kin = new Set<string>()
  for (const base of bases) {
    const derived = (derivations().get(base) ?? []).filter(word => isMadeFrom(word, base))
    for (const each of [base, ...derived]) {
      kin.add(each)
      for (const form of formsOf(each)) kin.add(form)
    }
  }
  return kin
}

/** WordNet's links go both ways: seduction is made from seduce, and love is not made from lover. */
function isMadeFrom(word: string, base: string): boolean {
  return word.length >= base.length && word.startsWith(base.slice(0, 3))
}

/** Regular endings alone: shot and cast are forms of verbs, and words of their own to a child. */
function formsOf(base: string): readonly string[] {
  const plurals = irregularPlurals().get(base)?.forms ?? []
  const before = /[^aeiou]y$/.test(base) ? `${base.slice(0, -1)}i` : base
  return [
    sFormOf({ text: base }).form,
    `${base}'s`,
    ...plurals,
    ...(base.endsWith('man') ? [`${base.slice(0, -3)}men`] : []),
    ...['ly', 'ness', 'ful', 'less'].map(ending => before + ending),
    ...['ed', 'ing', 'er', 'ers', 'est', 'ish'].flatMap(ending => joinedBothWays(base, ending)),
    ...(oneConsonantAfterVowel.test(base) ? [`${base}${base.slice(-1)}y`] : []),
  ]
}

const oneConsonantAfterVowel = /[^aeiou][aeiou][bdgmnpt]$/

/** Whether a longer word doubles its last letter depends on its stress: kidnapped, murdered. Both are tried. */
function joinedBothWays(base: string, ending: string): readonly string[] {
  const { form } = join(base, ending)
  return oneConsonantAfterVowel.test(base) ? [form, base + base.slice(-1) + ending] : [form]
}
