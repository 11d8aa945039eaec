/** Pronunciations that tables settle, before any preference is asked. */
import { lazily } from '../../lazily.js'
import { rowsOf } from '../tables/installed-tables.js'

/** One way to say a word that is spelled like another when said. */
export interface Use {
  readonly pronunciation: string
  /** In plain words. */
  readonly meaning: string
}

/** Instead of what the dictionary has. */
export const corrections: () => ReadonlyMap<string, string> = lazily(() =>
  pronunciationByWord('pronunciation/corrections'),
)

/** Of words that the dictionary lacks. */
export const addedPronunciations: () => ReadonlyMap<string, string> = lazily(() =>
  pronunciationByWord('pronunciation/added-words'),
)

/** Before the others that the dictionary has. */
export const firstPronunciations: () => ReadonlyMap<string, string> = lazily(() =>
  pronunciationByWord('pronunciation/first-pronunciations'),
)

/** Two uses or more of a word, the commoner in speech to children first. */
export const heteronyms: () => ReadonlyMap<string, readonly Use[]> = lazily(() => {
  const uses = new Map<string, readonly Use[]>()
  for (const [word = '', pronunciation = '', meaning = ''] of rowsOf('pronunciation/heteronyms'))
    uses.set(word, [...(uses.get(word) ?? []), { pronunciation, meaning }])
  return uses
})

function pronunciationByWord(table: string): ReadonlyMap<string, string> {
  return new Map(rowsOf(table).map(([word = '', pronunciation = '']) => [word, pronunciation]))
}
