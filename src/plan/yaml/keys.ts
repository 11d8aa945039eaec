/** Reading the keys of a map: each known key by its own reader, an unknown one an error that names the nearest. */

import { fail, failWith, outcomeOf, record, type ValueOf } from '../../outcomes.js'
import { errorAt, type Outcome, type Place, type Problem } from '../../problems.js'
import type { Key } from '../keys/key.js'
import { foldName } from '../values/fold-name.js'
import type { OtherNames } from '../values/nearest.js'
import { nearestAdvice } from '../values/nearest.js'
import type { Entry, MapEntry, Pair, Reader } from './entry.js'

type Readers = Readonly<Record<string, Key<unknown>>>

export interface ReadKeys<R extends Readers> {
  readonly values: { readonly [K in keyof R]?: ValueOf<ReturnType<R[K]>> }
  /** Where the value of each key stands. */
  readonly places: ReadonlyMap<keyof R, Place>
}

export interface KeyTable<R extends Readers> {
  /** What the keys belong to, with its article: `a mark`. */
  readonly what: string
  readonly readers: R
  /** What must hold between the keys; told even where a value is wrong. */
  readonly rules?: readonly Problem[]
  /** Other spellings that are taken too, each with the key it stands for. */
  readonly synonyms?: Readonly<Record<string, keyof R & string>>
  /** Keys that are read elsewhere, and may be suggested for a mistyped one. */
  readonly furtherKeys?: readonly string[]
  /** Keys that belong to something else, and what the trade calls some of them. */
  readonly others?: () => OtherNames
}

/** Keys that are left out are left out of `values`. */
export function readKeys<R extends Readers>(map: MapEntry, table: KeyTable<R>): Outcome<ReadKeys<R>> {
  const { known, problems } = sortKeys(map, table)
  const outcomes: Record<string, Outcome<unknown>> = {}
  for (const [key, pair] of known) outcomes[key] = readPair(pair, table.readers[key]!)
  const read = record(outcomes)
  const places = new Map([...known].map(([key, pair]) => [key, pair.value.place]))
  const all = [...(table.rules ?? []), ...problems, ...read.problems]
  if (!read.ok) return failWith(all)
  return outcomeOf({ values: read.value as ReadKeys<R>['values'], places }, all)
}

/** The value at a key in any spelling, for what must be known before the map is read; the first of several. */
export function valueAt(entry: Entry | undefined, key: string): Entry | undefined {
  if (entry?.kind !== 'map') return undefined
  return entry.pairs.find(pair => foldName(pair.key) === foldName(key))?.value
}

/** A key with nothing behind it: the comment may hold what was meant. */
function readPair(pair: Pair, reader: Reader<unknown>): Outcome<unknown> {
  const outcome = reader(pair.value)
  if (outcome.ok || pair.value.kind !== 'empty') return outcome
  const comment = pair.value.comment?.trim()
  const advice = comment
    ? `A # begins a note; put what follows it in quotes: ${pair.key}: "#${comment}".`
    : (outcome.problems[0]?.advice ?? 'Write its value behind the colon, or take the line out.')
  return fail(errorAt(pair.value.place, `"${pair.key}" has no value`, advice))
}

function sortKeys<R extends Readers>(
  map: MapEntry,
  table: KeyTable<R>,
): { known: ReadonlyMap<string, Pair>; problems: readonly Problem[] } {
  const spellings = new Map(Object.keys(table.readers).map(key => [foldName(key), key]))
  for (const [synonym, key] of Object.entries(table.synonyms ?? {})) spellings.set(foldName(synonym), key)
  const known = new Map<string, Pair>()
  const problems: Problem[] = []
  for (const pair of map.pairs) {
    const key = spellings.get(foldName(pair.key))
    const earlier = key === undefined ? undefined : known.get(key)
    if (key === undefined) problems.push(unknownKey(pair, table))
    else if (earlier) problems.push(repeatedKey(pair, earlier))
    else known.set(key, pair)
  }
  return { known, problems }
}

function unknownKey<R extends Readers>(pair: Pair, table: KeyTable<R>): Problem {
  const { what, readers, furtherKeys = [], others } = table
  const keys = [...Object.keys(readers), ...furtherKeys]
  const say = (advice: string) => errorAt(pair.keyPlace, `unknown key "${pair.key}" in ${what}`, advice)
  const comma = pair.value.kind === 'empty' && pair.key.includes(' ')
  if (comma) return say('Between braces a comma ends a value; put a text that holds a comma in quotes.')
  return say(
    nearestAdvice({
      name: pair.key,
      known: keys,
      where: `The keys of ${what} are ${keys.join(', ')}.`,
      others,
    }),
  )
}

function repeatedKey(pair: Pair, earlier: Pair): Problem {
  const line = earlier.keyPlace.line === undefined ? '' : ` (first on line ${earlier.keyPlace.line})`
  return errorAt(pair.keyPlace, `the key "${pair.key}" stands twice${line}`, 'Keep one of the two.')
}
