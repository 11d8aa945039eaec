/** Lists for groups, from short words to long, that show one pattern: as `spread:` of a plan asks for. */
import { andThen, fail, succeed } from '../outcomes.js'
import { proposedGroups } from '../pipeline/report/proposed-groups.js'
import { planVocabulary } from '../pipeline/vocabulary.js'
import { disk } from '../plan/disk/disk.js'
import type { FileAccess } from '../plan/disk/file-access.js'
import { loadReadablePart } from '../plan/load-plan.js'
import { errorAt, type Outcome } from '../problems.js'

export interface ListsWish {
  readonly plan: string
  readonly files?: FileAccess
  readonly pattern: string
  readonly lists: number
  readonly words: number
}

export interface ProposedList {
  readonly name: string
  readonly words: readonly string[]
}

/** Of words that the class can read, where the plan's class file says what it has been taught. */
export async function proposeLists({
  plan: file,
  files = disk,
  pattern,
  lists,
  words,
}: ListsWish): Promise<Outcome<readonly ProposedList[]>> {
  const plan = loadReadablePart(file, planVocabulary(), files)?.plan
  const place = { file }
  if (plan === undefined) return fail(errorAt(place, 'the plan cannot be read', 'Mend it first.'))
  const found = await proposedGroups({ ...plan, spread: { place, pattern, lists, words } })
  return andThen(found, groups =>
    succeed(groups.map(group => ({ name: group.name, words: group.words.map(({ text }) => text) }))),
  )
}
