/**
 * Words that look as if they were made from another word and are not, or no longer are to a child; word-groups.tsv says
 * what each group is.
 */
import { lazily } from '../../lazily.js'
import { groupsOf } from '../tables/installed-tables.js'
import { wordList } from '../tables/word-list.js'

export type WordGroup = 'no base' | 'no ending' | 'no prefix' | 'no suffix'

const groups = lazily(
  () => new Map([...groupsOf('patterns/word-groups')].map(([group, words]) => [group, wordList([...words])])),
)

export function isInWordGroup(word: string, group: WordGroup): boolean {
  return groups().get(group)?.(word) === true
}
