/** The base words that a form may come from: jumped from jump, ponies from pony, thinner from thin. */
import { join } from '../endings/adding.js'
import { irregularPlurals } from '../endings/irregular-plurals.js'
import { irregularVerbs } from '../endings/irregular-verbs.js'
import type { OpenClass } from './wordnet.js'

export type InflectedForm = 'plural' | 'verb in s' | 'past' | 'ing' | 'comparison'

export interface Base {
  readonly base: string
  readonly form: InflectedForm
}

export const classOfForm: Readonly<Record<InflectedForm, OpenClass>> = {
  plural: 'noun',
  'verb in s': 'verb',
  past: 'verb',
  ing: 'verb',
  comparison: 'adjective',
}

/** By no rule: swam, oxen. */
export function irregularForms(): ReadonlyMap<string, readonly Base[]> {
  const forms = new Map<string, Base[]>()
  const add = (word: string, found: Base) => {
    if (word === found.base) return
    const known = forms.get(word)
    if (known) known.push(found)
    else forms.set(word, [found])
  }
  for (const [base, { past, participle }] of irregularVerbs())
    for (const form of new Set([...past, ...participle])) add(form, { base, form: 'past' })
  for (const [base, { forms: plurals }] of irregularPlurals())
    for (const form of plurals) add(form, { base, form: 'plural' })
  return forms
}

/** Every base that a regular ending could have been joined to; the caller knows which are words. */
export function regularBases(word: string): readonly Base[] {
  return [
    ...basesBefore(word, 'ed').map((base): Base => ({ base, form: 'past' })),
    ...basesBefore(word, 'ing').map((base): Base => ({ base, form: 'ing' })),
    ...basesBefore(word, 'er').map((base): Base => ({ base, form: 'comparison' })),
    ...basesBefore(word, 'est').map((base): Base => ({ base, form: 'comparison' })),
    ...basesBeforeS(word).flatMap((base): readonly Base[] => [
      { base, form: 'plural' },
      { base, form: 'verb in s' },
    ]),
  ]
}

function basesBefore(word: string, ending: string): readonly string[] {
  if (!word.endsWith(ending) || word.length < ending.length + 2) return []
  const stem = word.slice(0, -ending.length)
  const candidates = [stem, `${stem}e`]
  if (/([^aeiou])\1$/.test(stem)) candidates.push(stem.slice(0, -1))
  if (stem.endsWith('i')) candidates.push(`${stem.slice(0, -1)}y`)
  if (stem.endsWith('ck')) candidates.push(stem.slice(0, -1))
  if (stem.endsWith('y')) candidates.push(`${stem.slice(0, -1)}ie`)
  return [...new Set(candidates)].filter(base => {
    const doubled = base.length < stem.length && stem.startsWith(base)
    const asItIs = base === stem && !isShort(stem)
    return doubled || asItIs || join(base, ending).form === word
  })
}

/** Always doubles its last letter: staring is no form of star. */
function isShort(stem: string): boolean {
  return /^[^aeiouy]*[aeiou][^aeiouwxy]$/.test(stem)
}

function basesBeforeS(word: string): readonly string[] {
  if (!word.endsWith('s') || word.endsWith('ss')) return []
  const stems = [word.slice(0, -1)]
  if (/(?:s|x|z|ch|sh|o)es$/.test(word)) stems.push(word.slice(0, -2))
  if (/ies$/.test(word)) stems.push(`${word.slice(0, -3)}y`)
  if (/ves$/.test(word)) stems.push(`${word.slice(0, -3)}f`, `${word.slice(0, -3)}fe`)
  return stems
}
