/** Verbs whose past no rule gives. */
import { lazily, rowsOf } from '../tables/installed-tables.js'

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
