/** Words that sound like another with a different spelling; homophones.tsv says which, and in which accents. */
import type { Accent } from '../../plan/plan.js'
import { lazily, rowsOf } from '../tables/installed-tables.js'

/** Where a group of words sounds the same. */
type Where = 'every accent' | 'wh said as w' | 'cot and caught merged' | 'r dropped'

type Group = readonly string[]

const rows = lazily(() => rowsOf('patterns/homophones'))

function groupsWhere(wanted: Where): readonly Group[] {
  return rows().flatMap(([words = '', where]) => (where === wanted ? [words.split(' ')] : []))
}

/** Those that sound the same in General American. */
export function homophoneGroups(): readonly Group[] {
  return [...groupsWhere('every accent'), ...groupsWhere('wh said as w')]
}

type SoundAlikes = ReadonlyMap<string, readonly string[]>

function soundAlikes(table: readonly Group[]): SoundAlikes {
  const alike = new Map<string, readonly string[]>()
  for (const group of table) {
    for (const word of group) {
      const others = group.filter(other => other !== word)
      const key = word.toLowerCase()
      alike.set(key, [...(alike.get(key) ?? []), ...others])
    }
  }
  return alike
}

const inGeneralAmerican = lazily(() => soundAlikes(homophoneGroups()))
const whereMerged = lazily(() => soundAlikes(groupsWhere('cot and caught merged')))
const withoutR = lazily(() => soundAlikes(groupsWhere('r dropped')))
const withWh = lazily(
  () => new Set(groupsWhere('wh said as w').flatMap(group => group.filter(word => word.startsWith('wh')))),
)

/** The other spellings of its sound, if there are any. The word is in lower case. */
export function homophonesOf(word: string, accent?: Accent): readonly string[] {
  const listed = inGeneralAmerican().get(word) ?? []
  if (accent === undefined) return listed
  return [
    ...(accent.wh === 'own' ? listed.filter(other => withWh().has(other) === withWh().has(word)) : listed),
    ...((accent.cotCaught === 'merged' && whereMerged().get(word)) || []),
    ...((!accent.rhotic && withoutR().get(word)) || []),
  ]
}
