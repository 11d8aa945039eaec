/** Words that the rules would divide otherwise than a dictionary does. */
import { lazily } from '../../lazily.js'
import { wordsOf } from '../tables/installed-tables.js'

export type Division = readonly string[]

/** By the word; several divisions of one word have different numbers of syllables. */
export const listedDivisions: () => ReadonlyMap<string, readonly Division[]> = lazily(
  () => new Map(wordsOf('syllables/exceptions').map(readDivisions)),
)

function readDivisions(written: string): readonly [word: string, divisions: readonly Division[]] {
  const divisions = written
    .toLowerCase()
    .split(' ')
    .map(division => division.split('·'))
  return [divisions[0]!.join(''), divisions]
}
