/** Verbs whose past no rule gives. */
import { lazily } from '../../lazily.js'
import { rowsOf } from '../tables/installed-tables.js'

/** The commoner form first. */
export interface IrregularVerb {
  readonly past: readonly string[]
  readonly participle: readonly string[]
}

/** By their base. */
export const irregularVerbs: () => ReadonlyMap<string, IrregularVerb> = lazily(
  () =>
    new Map(
      rowsOf('endings/irregular-verbs').map(([base = '', past = '', participle = '']) => [
        base,
        { past: past.split(' '), participle: participle.split(' ') },
      ]),
    ),
)

/** Pasts and participles that are no verb's base themselves: broke, fell, chosen; not cut, nor lay. */
export const pastForms: () => ReadonlySet<string> = lazily(
  () =>
    new Set(
      [...irregularVerbs()].flatMap(([verb, { past, participle }]) =>
        [...past, ...participle].filter(form => form !== verb && !irregularVerbs().has(form)),
      ),
    ),
)
