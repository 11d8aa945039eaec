/**
 * Work kept by what it was made from, so that a program that holds a plan open re-does only what a change touches.
 * What it was made from is compared by content; places in the plan's text are left out of that, since a line added
 * above moves every place below it. A value that names places (an outcome with problems) is kept for these alone.
 */
import { type Outcome, type Place, withoutPlaces } from '../problems.js'

/** A value of an earlier stage, told apart from others by which object it is. */
export class ByIdentity {
  constructor(readonly object: object) {}
}

export function byIdentity(object: object): ByIdentity {
  return new ByIdentity(object)
}

export interface MadeFrom {
  /** Plain data, and values of earlier stages wrapped in `byIdentity`. */
  readonly parts: readonly unknown[]
  /** The places that its problems may name. */
  readonly places: readonly (Place | undefined)[]
}

export interface KeptStore<V> {
  /** The value that was made from the same before, or a new one. */
  readonly once: (from: MadeFrom, make: () => V) => V
  readonly onceAsync: (from: MadeFrom, make: () => Promise<V>) => Promise<V>
  /** How many values were made, not recalled. */
  readonly made: () => number
  /** Lets go of what nobody has asked for since the last call. */
  readonly letGo: () => void
}

/** Numbers objects in the order in which they are first seen; holds none of them. */
export type Identify = (object: object) => number

export function identities(): Identify {
  const numbers = new WeakMap<object, number>()
  let count = 0
  return object => {
    const known = numbers.get(object)
    if (known !== undefined) return known
    numbers.set(object, ++count)
    return count
  }
}

/** @param namesPlaces whether a value tells of places in the plan's text, as problems do */
export function keptStore<V>(identify: Identify, namesPlaces: (value: V) => boolean): KeptStore<V> {
  let kept = new Map<string, { readonly value: V }>()
  let asked = new Map<string, { readonly value: V }>()
  let made = 0
  const recall = (keys: Keys): { readonly value: V } | undefined => {
    for (const key of keys) {
      const found = asked.get(key) ?? kept.get(key)
      if (found === undefined) continue
      asked.set(key, found)
      return found
    }
    return undefined
  }
  const keep = ([anywhere, here]: Keys, value: V): V => {
    made += 1
    asked.set(namesPlaces(value) ? here : anywhere, { value })
    return value
  }
  return {
    once: (from, make) => {
      const keys = keysOf(from, identify)
      const found = recall(keys)
      return found === undefined ? keep(keys, make()) : found.value
    },
    onceAsync: async (from, make) => {
      const keys = keysOf(from, identify)
      const found = recall(keys)
      return found === undefined ? keep(keys, await make()) : found.value
    },
    made: () => made,
    letGo: () => {
      kept = asked
      asked = new Map()
    },
  }
}

/** A store that recalls nothing and holds nothing: for values that are used once and are large. */
export function passingStore<V>(): KeptStore<V> {
  let made = 0
  return {
    once: (_from, make) => {
      made += 1
      return make()
    },
    onceAsync: (_from, make) => {
      made += 1
      return make()
    },
    made: () => made,
    letGo: () => {},
  }
}

/** A store of outcomes: one with problems is kept for the places that it names. */
export function keptOutcomes<T>(identify: Identify): KeptStore<Outcome<T>> {
  return keptStore<Outcome<T>>(identify, outcome => outcome.problems.length > 0)
}

/** Wherever it stands in the plan, and at these places alone. */
type Keys = readonly [anywhere: string, here: string]

function keysOf({ parts, places }: MadeFrom, identify: Identify): Keys {
  const anywhere = JSON.stringify(parts, (key, value: unknown) =>
    value instanceof ByIdentity ? `object ${identify(value.object)}` : withoutPlaces(key, value),
  )
  return [anywhere, `${anywhere} ${JSON.stringify(places)}`]
}
