/** Nouns that a rule of plurals must know by name; plural-groups.tsv says what each group is. */
import { lazily } from '../../lazily.js'
import { groupsOf } from '../tables/installed-tables.js'

export type PluralGroup =
  | 'always plural'
  | 'not counted'
  | 'counted doing'
  | 'counted in ness'
  | 'f to v'
  | 'keeps its f'
  | 'o adds es'
  | 'man adds s'
  | 'one thing in s'
  | 'one thing in men'
  | 'ch says k'

const groups = lazily(() => groupsOf('endings/plural-groups'))

export function isInGroup(noun: string, group: PluralGroup): boolean {
  return groups().get(group)?.has(noun) === true
}

const fToV = lazily(() => [...(groups().get('f to v') ?? [])])

/** wolf, and its compounds as well: werewolf. */
export function endsLikeFToV(noun: string): boolean {
  return fToV().some(listed => noun.endsWith(listed))
}
