/** Words that a rule of syllables must know by name; seam-groups.tsv says what each group is. */
import { lazily } from '../../lazily.js'
import { groupsOf } from '../tables/installed-tables.js'

export type SeamGroup = 'no prefix' | 'no suffix' | 'no -ed' | 'no -ing' | 'll kept'

const groups = lazily(() => groupsOf('syllables/seam-groups'))

export function isInSeamGroup(word: string, group: SeamGroup): boolean {
  return groups().get(group)?.has(word) === true
}
