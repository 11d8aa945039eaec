import type { Paper } from '../../src/plan/plan.js'
import { paperReader } from '../../src/plan/values/papers.js'
import { papers } from '../../src/sheets/papers.js'
import { vocabulary } from '../plan/vocabulary.js'

const readPaper = paperReader({ ...vocabulary, papers })

/** The paper that a plan means by this name; undefined where it means none. */
export function paperNamed(text: string): Paper | undefined {
  const read = readPaper({ kind: 'text', text, place: { file: 'plan.yaml' } })
  return read.ok ? read.value : undefined
}
