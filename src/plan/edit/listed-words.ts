/** The words of a list's file as they would stand in the plan. */
import { dirname, join } from 'node:path'
import type { FileAccess } from '../disk/file-access.js'
import { foldName } from '../values/fold-name.js'
import { wordListFileEntries } from '../words/word-list.js'
import type { Entry } from '../yaml/entry.js'
import type { PlanData } from './plan-edit.js'

export interface ListedIn {
  readonly plan: string
  /** As the plan names it. */
  readonly list: string
  readonly files: FileAccess
}

/** Undefined where the file cannot be read, or holds no word. */
export function listedWords({ plan, list, files }: ListedIn): readonly PlanData[] | undefined {
  const entries = wordListFileEntries(join(dirname(plan), list), files)
  return entries.ok ? entries.value.flatMap(entry => written(entry, dirname(list)) ?? []) : undefined
}

function written(entry: Entry, folder: string): PlanData | undefined {
  if (entry.kind === 'text') return entry.text
  if (entry.kind !== 'map') return undefined
  const pairs = entry.pairs.flatMap(({ key, value }) => {
    if (value.kind !== 'text') return []
    const name = key.toLowerCase()
    // A picture is looked for beside the file that names it.
    const isBeside = foldName(name) === 'picture' && folder !== '.'
    return [[name, isBeside ? `${folder}/${value.text}` : value.text] as const]
  })
  const [only] = pairs
  return pairs.length === 1 && only?.[0] === 'word' ? only[1] : Object.fromEntries(pairs)
}
