/** What a teacher may write in a plan: its keys and names, told without a plan to read and without any font's file. */
import { present } from '../outcomes.js'
import { vocabularyOfNames } from '../pipeline/vocabulary-of-names.js'
import type { Schema } from '../plan/keys/json-schema.js'
import { exampleOf, placeInWords } from '../plan/keys/placed-keys.js'
import { takenInWords, valuesOf } from '../plan/keys/taken-in-words.js'
import { classFileSchema, keysOfPlan, planSchema } from '../plan/plan-keys.js'
import { foldName } from '../plan/values/fold-name.js'
import { nearestAdvice } from '../plan/values/nearest.js'

/** Every key that can stand in a plan or a class file, with all that a teacher is told of it. */
export function planKeys(): readonly ToldKey[] {
  return keysOfPlan(vocabularyOfNames()).map(placed => ({
    name: placed.name,
    place: placeInWords(placed.place),
    does: placed.key.text.does,
    takes: takenInWords(placed.key.takes),
    values: valuesOf(placed.key.takes),
    ...present({ usual: placed.key.text.usual }),
    example: exampleOf(placed).join('\n'),
    since: placed.key.text.since,
  }))
}

export interface ToldKey {
  readonly name: string
  /** Where it stands: `a mark under "marks:"`. */
  readonly place: string
  /** A clause that begins small and has no full stop. */
  readonly does: string
  readonly takes: string
  /** Where it is one of some names: all of them. */
  readonly values: readonly string[]
  /** What holds where it is left out. */
  readonly usual?: string
  /** Lines of a plan that hold it at its place. */
  readonly example: string
  /** The version that brought it. */
  readonly since: string
}

function foldedFirst([said, instead]: readonly [string, string]): readonly [string, string] {
  return [foldName(said), instead]
}

/** The JSON Schema (draft 2020-12) of a plan, or of a class file. */
export function jsonSchema(of: 'plan' | 'class file'): Schema {
  const vocabulary = vocabularyOfNames()
  return of === 'plan' ? planSchema(vocabulary) : classFileSchema(vocabulary)
}

/** What to write instead of a name that is neither a key nor anything that can be named in a plan. */
export function nameAdvice(name: string): string {
  const vocabulary = vocabularyOfNames()
  const { layouts, patterns, lines, outlines } = vocabulary
  const keys = keysOfPlan(vocabulary).map(placed => placed.name)
  const known = [...new Set([...keys, ...layouts.keys(), ...patterns, ...lines, ...outlines])]
  const kinds = ['key', 'layout', 'pattern']
  const others = () => new Map(kinds.flatMap(kind => [...vocabulary.tradeWords(kind)]).map(foldedFirst))
  return nearestAdvice({ name, known, where: '"oaktag list keys" shows all keys.', others })
}

export { toldNames } from '../pipeline/told-names.js'
export { emptyPlan, SCHEMA_FILE, starterPlan } from '../plan/starter-plan.js'
export { partsOfSpeech } from '../plan/words/parts-of-speech.js'
