import { lazily } from '../../lazily.js'
import { wordsOf } from '../tables/installed-tables.js'

/** A compound's two words. */
export interface Halves {
  readonly first: string
  readonly second: string
  /** Index of the second half's first letter in the text. */
  readonly at: number
  /** In the table of compounds that the rule would miss. */
  readonly isListed?: true
}

const listed: () => ReadonlyMap<string, Halves> = lazily(
  () =>
    new Map(
      wordsOf('compounds/compounds').map(parts => {
        const [first = '', second = ''] = parts.split('+')
        return [first + second, { first, second, at: first.length, isListed: true }]
      }),
    ),
)

/** The halves of a compound that the rule would miss. */
export function listedHalves(text: string): Halves | undefined {
  return listed().get(text)
}
