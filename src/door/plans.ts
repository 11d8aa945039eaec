import { present } from '../outcomes.js'
import { planVocabulary } from '../pipeline/vocabulary.js'
import { disk } from '../plan/disk/disk.js'
import type { FileAccess, FileContents } from '../plan/disk/file-access.js'
import type { Schema } from '../plan/keys/json-schema.js'
import { exampleOf, placeInWords } from '../plan/keys/placed-keys.js'
import { takenInWords, valuesOf } from '../plan/keys/taken-in-words.js'
import type { Plan } from '../plan/plan.js'
import { classFileSchema, keysOfPlan, planSchema, readPlan as readPlanText } from '../plan/read-plan.js'
import { foldName } from '../plan/values/fold-name.js'
import { nearestAdvice } from '../plan/values/nearest.js'
import type { Outcome } from '../problems.js'

export interface PlanReading {
  /** Path of the plan, for messages and for what it names beside itself; `plan.yaml` where left out. */
  readonly file?: string
  /** How word lists, a class file, pictures and fonts are read; the machine's own files where left out. */
  readonly files?: FileAccess
}

/** Reads a plan from its text: every problem of it in one go, in the order of the text. Reads no plan file. */
export function readPlan(
  text: string,
  { file = 'plan.yaml', files = disk }: PlanReading = {},
): Outcome<Plan> {
  return readPlanText({ file, text, vocabulary: planVocabulary(), files })
}

/** Every key that can stand in a plan or a class file, with all that a teacher is told of it. */
export function planKeys(): readonly ToldKey[] {
  return keysOfPlan(planVocabulary()).map(placed => ({
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

/** The machine's own files, and one of this path that is held in memory. */
export function withFile(path: string, text: string): FileAccess {
  const bytes = new TextEncoder().encode(text)
  return {
    read: (asked, most) => {
      if (asked !== path) return disk.read(asked, most)
      return bytes.length > most ? { kind: 'too large', sizeBytes: bytes.length } : { kind: 'bytes', bytes }
    },
    beginning: (asked, count) =>
      asked === path ? { kind: 'bytes', bytes: bytes.subarray(0, count) } : disk.beginning(asked, count),
  }
}

/** The JSON Schema (draft 2020-12) of a plan, or of a class file. */
export function jsonSchema(of: 'plan' | 'class file'): Schema {
  const vocabulary = planVocabulary()
  return of === 'plan' ? planSchema(vocabulary) : classFileSchema(vocabulary)
}

/** What to write instead of a name that is neither a key nor anything that can be named in a plan. */
export function nameAdvice(name: string): string {
  const vocabulary = planVocabulary()
  const { layouts, patterns, lines, outlines } = vocabulary
  const keys = keysOfPlan(vocabulary).map(placed => placed.name)
  const known = [...new Set([...keys, ...layouts.keys(), ...patterns, ...lines, ...outlines])]
  const kinds = ['key', 'layout', 'pattern']
  const others = () => new Map(kinds.flatMap(kind => [...vocabulary.tradeWords(kind)]).map(foldedFirst))
  return nearestAdvice({ name, known, where: '"oaktag list keys" shows all keys.', others })
}

export { planNames } from '../pipeline/names.js'
export { stemOf } from '../plan/assemble-plan.js'
export { SCHEMA_FILE, starterPlan } from '../plan/starter-plan.js'
export { LARGEST_SEED } from '../plan/values/numbers.js'
export type { FileAccess, FileContents, Plan }
