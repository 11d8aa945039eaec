import { draftsForDoingAndDescribing } from './drafts-for-doing-and-describing.js'
import { draftsForNamingWords } from './drafts-for-naming-words.js'

/**
 * Our own drafts for everyday words whose dictionary gloss is too learned for a class (a frog is there a tailless
 * stout-bodied amphibian) or begins with a sense that a child does not know. They come before the lexicon's.
 */
export const plainDrafts: ReadonlyMap<string, string> = new Map(
  [draftsForNamingWords, draftsForDoingAndDescribing].flatMap(readTable),
)

function readTable(table: string): readonly (readonly [word: string, draft: string])[] {
  return table
    .trim()
    .split('\n')
    .map(line => {
      const colon = line.indexOf(': ')
      return [line.slice(0, colon), line.slice(colon + 2)] as const
    })
}
