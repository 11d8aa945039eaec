/** `week:`, the whole set of a week from its words, less what the teacher leaves out. */
import { andThen, succeed, together } from '../../outcomes.js'
import type { Outcome, Place } from '../../problems.js'
import { key, reading, type ValueReader } from '../keys/key.js'
import type { Takes } from '../keys/takes.js'
import { nameReader } from '../values/names.js'
import { yesNo } from '../values/options.js'
import type { Entry } from '../yaml/entry.js'
import { readKeys } from '../yaml/keys.js'
import { weekParts } from './week-parts.js'

export interface WeekWish {
  readonly place: Place
  /** Names of parts, or of layouts for all parts of these. */
  readonly without: readonly string[]
}

const what = 'a week'
const partNames = [...new Set(weekParts.flatMap(({ name, layout }) => [name, layout]))]

const partNamed = nameReader({
  what: 'a part of the week',
  known: partNames,
  where: `The week has ${weekParts.map(({ name }) => name).join(', ')}.`,
})

const partsTaken: Takes = { kind: 'list', of: partNamed.takes, alone: true, empty: false }

const partsReader = reading(partsTaken, (entry): Outcome<readonly string[]> => {
  return together((entry.kind === 'list' ? entry.items : [entry]).map(partNamed))
})

const weekKeys = {
  without: key('parts of the week that are left out', partsReader, {
    example: '[bingo, practice-copy]',
    usual: 'none is',
  }),
}

const yes = yesNo(true)

/** `yes`, or the parts to go without; undefined for `no`. */
export const readWeek: ValueReader<WeekWish | undefined> = reading(
  {
    kind: 'any of',
    ways: [{ kind: 'yes or no' }, { kind: 'keys', what, keys: () => weekKeys, needed: ['without'] }],
  },
  (entry: Entry): Outcome<WeekWish | undefined> => {
    const { place } = entry
    if (entry.kind !== 'map')
      return andThen(yes.read(entry), says => succeed(says ? { place, without: [] } : undefined))
    return andThen(readKeys(entry, { what, readers: weekKeys }), ({ values: { without = [] } }) =>
      succeed({ place, without }),
    )
  },
)
