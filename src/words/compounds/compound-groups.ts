/** Words and halves that the rule of compounds must know by name; look-alikes.tsv says what each group is. */
import { lazily } from '../../lazily.js'
import { groupsOf } from '../tables/installed-tables.js'
import { wordList } from '../tables/word-list.js'

export type CompoundGroup = 'no compound' | 'no first half' | 'no second half'

const groups = lazily(
  () =>
    new Map([...groupsOf('compounds/look-alikes')].map(([group, words]) => [group, wordList([...words])])),
)

export function isInCompoundGroup(word: string, group: CompoundGroup): boolean {
  return groups().get(group)?.(word) === true
}
