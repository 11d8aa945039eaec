import { andThen } from '../outcomes.js'
import type { Outcome } from '../problems.js'
import { disk } from './disk/disk.js'
import type { FileAccess } from './disk/file-access.js'
import { readTextFile } from './disk/text-file.js'
import type { Plan } from './plan.js'
import { readPlan } from './read-plan.js'
import { type ReadablePart, readablePart } from './readable-part.js'
import type { Vocabulary } from './vocabulary.js'

/** The plan in the file at `path`, as the teacher gave it; a file that cannot be read is a problem without a line. */
export function loadPlan(path: string, vocabulary: Vocabulary, files: FileAccess = disk): Outcome<Plan> {
  const text = readTextFile({ path, what: 'the plan', place: { file: path } }, files)
  return andThen(text, content => readPlan({ file: path, text: content, vocabulary, files }))
}

/** What can be read of a plan in which `loadPlan` found problems; undefined where too little is left. */
export function loadReadablePart(
  path: string,
  vocabulary: Vocabulary,
  files: FileAccess = disk,
): ReadablePart | undefined {
  const text = readTextFile({ path, what: 'the plan', place: { file: path } }, files)
  return text.ok ? readablePart({ file: path, text: text.value, vocabulary, files }) : undefined
}
