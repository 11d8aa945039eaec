import { planVocabulary } from '../pipeline/vocabulary.js'
import { type ClassPlans, plansOfClass } from '../plan/class-plans.js'
import { disk } from '../plan/disk/disk.js'
import type { FileAccess, FileContents } from '../plan/disk/file-access.js'
import type { Plan } from '../plan/plan.js'
import { readPlan as readPlanText } from '../plan/read-plan.js'
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

/** The plans of the weeks of a class file, with what is wrong with it; undefined where the file is no class file. */
export function weekPlans(file: string, files: FileAccess = disk): ClassPlans | undefined {
  return plansOfClass({ file, files, vocabulary: planVocabulary() })
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

export { planNames } from '../pipeline/names.js'
export { stemOf } from '../plan/stem.js'
export { LARGEST_SEED } from '../plan/values/numbers.js'
export * from './plan-keys.js'
export type { ClassPlans, FileAccess, FileContents, Plan }
