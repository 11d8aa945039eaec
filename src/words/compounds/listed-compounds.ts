import { lazily, wordsOf } from '../tables/installed-tables.js'
import type { Halves } from './halves.js'

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
