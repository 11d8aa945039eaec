/** Nouns whose plural no spelling rule gives. The published checks hold the table against two independent libraries. */
import { lazily } from '../../lazily.js'
import { rowsOf } from '../tables/installed-tables.js'

export interface IrregularPlural {
  /** The commoner first. */
  readonly forms: readonly string[]
  /** In the words of a plural's rule. */
  readonly kind: string
}

const table = lazily(() =>
  rowsOf('endings/irregular-plurals').map(([singular = '', forms = '', kind = '']) => ({
    singular,
    forms: forms.split(' '),
    kind,
  })),
)

/** Changed inside, or with an ending of their own, or the same for one and for many. */
export const irregularPlurals: () => ReadonlyMap<string, IrregularPlural> = lazily(
  () =>
    new Map(
      table()
        .filter(({ kind }) => kind !== 'two spellings')
        .map(({ singular, ...plural }) => [singular, plural]),
    ),
)

/** Made by rule in two ways, the commoner first: scarves, scarfs. */
export const pluralsInTwoSpellings: () => ReadonlyMap<string, readonly string[]> = lazily(
  () =>
    new Map(
      table()
        .filter(({ kind }) => kind === 'two spellings')
        .map(({ singular, forms }) => [singular, forms]),
    ),
)

/** Plural to singular, for the irregular ones: feet, children, wolves are read as plurals already. */
export const singularOfIrregular: () => ReadonlyMap<string, string> = lazily(
  () =>
    new Map(
      [...irregularPlurals()]
        .filter(([, plural]) => plural.kind !== 'stays the same')
        .flatMap(([singular, plural]) => plural.forms.map(form => [form, singular] as const)),
    ),
)
