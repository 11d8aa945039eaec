/** Which list of marks is shown: that of the plan, or of a group. */
import { createContext } from 'preact'
import { useContext } from 'preact/hooks'
import type { Change, Data, Path } from '../messages.js'
import { listOf } from '../plan-values.js'
import { useDesk } from './desk-state.js'

export interface MarksPlace {
  readonly path: Path
  readonly entries: readonly Data[]
  /** Address of the looks of each. */
  readonly looks: readonly (string | null)[]
}

export const MarkedList = createContext<MarksPlace | undefined>(undefined)

/** Those of the plan where nothing else is said. */
export function useMarks(): MarksPlace & { readonly add: (mark: Data, says: string) => Promise<boolean> } {
  const { plan, change } = useDesk()
  const place = useContext(MarkedList) ?? {
    path: ['marks'],
    entries: listOf(plan.data, 'marks'),
    looks: plan.looks,
  }
  const { path, entries } = place
  const add = (mark: Data, says: string) => {
    const changes: readonly Change[] = [{ kind: 'insert', path, at: entries.length, values: [mark] }]
    return change(says, changes)
  }
  return { ...place, add }
}
