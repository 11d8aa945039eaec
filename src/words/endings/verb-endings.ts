import { lazily } from '../../lazily.js'
import { rowsOf } from '../tables/installed-tables.js'
import { join } from './adding.js'
import { irregularVerbs } from './irregular-verbs.js'
import { inTheCaseOf } from './letter-case.js'

export interface BuiltForm {
  readonly form: string
  /** In plain words: `add ed`, `drop e, add ed`, `double the last letter, add ing`, … */
  readonly rule: string
  readonly alternatives?: readonly string[]
}

/** How -ed is said: `t` in jumped, `d` in played, `id` (a syllable of its own) in wanted. */
export type SoundOfEd = 't' | 'd' | 'id'

export interface PastForm extends BuiltForm {
  /** Null for irregular verbs. */
  readonly sound: SoundOfEd | null
}

export interface VerbQuestion {
  /** A verb's base form. */
  readonly text: string
  /** ARPABET with stress. */
  readonly pronunciation?: string
}

/** The simple past of a verb. */
export function pastOf({ text, pronunciation }: VerbQuestion): PastForm {
  const base = text.toLowerCase()
  const irregular = irregularVerbs().get(base)
  if (irregular) return { ...irregularForm(text, base, irregular.past), sound: null }
  const joined = join(base, 'ed', pronunciation)
  const form = inTheCaseOf(text, joined.form)
  return { form, rule: `${ruleBefore(joined.rule)}add ed`, sound: soundOfEd(base, pronunciation) }
}

/** The form in -ing. */
export function ingFormOf({ text, pronunciation }: VerbQuestion): BuiltForm {
  const joined = join(text.toLowerCase(), 'ing', pronunciation)
  return { form: inTheCaseOf(text, joined.form), rule: `${ruleBefore(joined.rule)}add ing` }
}

const irregularS = lazily(
  () => new Map(rowsOf('endings/irregular-third-person').map(([verb = '', form = '']) => [verb, form])),
)

/** The third person: he jumps, she watches, it flies. */
export function sFormOf({ text }: VerbQuestion): BuiltForm {
  const base = text.toLowerCase()
  const found = irregularS().get(base)
  if (found) return { form: inTheCaseOf(text, found), rule: 'irregular ending' }
  if (/(?:[^aeiou]|qu)y$/.test(base))
    return { form: inTheCaseOf(text, `${base.slice(0, -1)}ies`), rule: 'y to i, add es' }
  if (/(?:ch|sh|s|x|z)$/.test(base))
    return { form: inTheCaseOf(text, `${base}es`), rule: 'add es after ch, sh, s, x, z' }
  if (/(?:echo|veto|torpedo|undergo|outdo|redo|undo|forgo)$/.test(base))
    return { form: inTheCaseOf(text, `${base}es`), rule: 'ends in o: add es' }
  return { form: inTheCaseOf(text, `${base}s`), rule: 'add s' }
}

function irregularForm(text: string, base: string, forms: readonly string[]): BuiltForm {
  const [form = base, ...alternatives] = forms.map(one => inTheCaseOf(text, one))
  if (alternatives.length > 0) return { form, rule: 'two forms in use', alternatives }
  return { form, rule: forms[0] === base ? 'stays the same' : 'changes inside' }
}

export function ruleBefore(rule: ReturnType<typeof join>['rule']): string {
  return rule === 'add' ? '' : `${rule}, `
}

/**
 * After /t/ or /d/ a syllable of its own; after the other voiceless sounds /t/; else /d/ (common practice, no
 * source). Without a pronunciation the base's last letters decide.
 */
export function soundOfEd(base: string, pronunciation?: string): SoundOfEd {
  const last = pronunciation?.trim().split(/\s+/).at(-1)?.replace(/\d/, '')
  if (last !== undefined) {
    if (last === 'T' || last === 'D') return 'id'
    return ['P', 'F', 'K', 'S', 'SH', 'CH', 'TH'].includes(last) ? 't' : 'd'
  }
  if (/[td]e?$/.test(base)) return 'id'
  return /(?:p|f|k|ss|x|sh|ch|ce|[rn]se|pe|ke|fe|gh)$/.test(base) ? 't' : 'd'
}
