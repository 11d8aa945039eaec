/**
 * Words that look as if they were made from another word and are not, or no longer are to a child; word-groups.tsv says
 * what each group is. And the other way round: compounds that do not look it.
 */
import { groupsOf, lazily, wordsOf } from '../tables/installed-tables.js'

export type WordGroup = 'no ending' | 'no prefix' | 'no suffix' | 'no compound'

const groups = lazily(
  () => new Map([...groupsOf('patterns/word-groups')].map(([group, words]) => [group, wordList([...words])])),
)

export function isInWordGroup(word: string, group: WordGroup): boolean {
  return groups().get(group)?.(word) === true
}

/** A star at the end of a word stands for any letters that follow. */
function wordList(words: readonly string[]): (word: string) => boolean {
  const whole = new Set(words.filter(word => !word.endsWith('*')))
  const beginnings = new Set(words.filter(word => word.endsWith('*')).map(word => word.slice(0, -1)))
  const lengths = [...beginnings].map(beginning => beginning.length)
  const [shortest, longest] = [Math.min(...lengths), Math.max(...lengths)]
  const beginsAsListed = (word: string): boolean => {
    for (let length = shortest; length <= Math.min(longest, word.length); length += 1) {
      if (beginnings.has(word.slice(0, length))) return true
    }
    return false
  }
  return word => whole.has(word) || beginsAsListed(word)
}

/** The two words that a listed compound is made of, in words: `cup and board`. */
export const alsoCompound: () => ReadonlyMap<string, string> = lazily(
  () =>
    new Map(
      wordsOf('patterns/compounds').map(parts => [parts.replace('+', ''), parts.replace('+', ' and ')]),
    ),
)
