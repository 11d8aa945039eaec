/** What all parts of the page share: the plan, its sheets, and a way to change it. */
import { createContext } from 'preact'
import { useContext } from 'preact/hooks'
import type { Change, DeskNames, DeskPlan, DeskSheets, Path } from '../messages.js'

export interface DeskState {
  readonly plan: DeskPlan
  readonly sheets: DeskSheets
  readonly names: DeskNames
  /** Whether it was done. */
  readonly change: (says: string, changes: readonly Change[], gesture?: string) => Promise<boolean>
  /** Said to everybody, by ear and by eye. */
  readonly say: (text: string) => void
  /** Leads to the control of something in the plan. */
  readonly lead: (path: Path) => void
  /** Where she was led last. */
  readonly led: Path
}

export const Desk = createContext<DeskState | undefined>(undefined)

export function useDesk(): DeskState {
  const state = useContext(Desk)
  if (state === undefined) throw new Error('this stands outside the desk')
  return state
}

/** The element that stands for a key or an entry of the plan. */
export function idOf(path: Path): string {
  return `at-${path
    .map(step =>
      String(step)
        .toLowerCase()
        .replaceAll(/[^a-z0-9]+/g, '_'),
    )
    .join('-')}`
}
