/** Where a list of words is written: in the plan for the class or a group, or in a file beside the plan. */
import { createContext } from 'preact'
import { useContext } from 'preact/hooks'
import type { Change, Data, Path } from '../messages.js'
import { idOf, useDesk } from './desk-state.js'

export interface ListPlace {
  /** Of its entries: in the plan, or in the file. */
  readonly path: Path
  /** As the plan names it. */
  readonly file?: string
  /** Anything, as in the plan; a text for each column; or the word alone. */
  readonly holds: 'keys' | 'cells' | 'word'
  readonly entries: readonly Data[]
}

export const Listed = createContext<ListPlace | undefined>(undefined)

export interface ListNow extends ListPlace {
  /** Path of the list as the page knows it. */
  readonly root: Path
  /** The element that stands for an entry, or a key of it. */
  readonly idAt: (...steps: Path) => string
  readonly newWordId: string
  readonly inList: (changes: readonly Change[]) => readonly Change[]
  readonly change: (says: string, changes: readonly Change[], gesture?: string) => Promise<boolean>
}

export function useList(): ListNow {
  const place = useContext(Listed)
  const { change } = useDesk()
  if (place === undefined) throw new Error('this stands outside a list of words')
  const { path, file } = place
  const root = file === undefined ? path : ['file', file]
  const inList = (changes: readonly Change[]) =>
    file === undefined ? changes : changes.map(each => ({ ...each, file }))
  return {
    ...place,
    root,
    idAt: (...steps) => idOf([...root, ...steps]),
    newWordId: newWordId(root),
    inList,
    change: (says, changes, gesture) => change(says, inList(changes), gesture),
  }
}

/** The field that takes the next word. */
export function newWordId(root: Path): string {
  return root.length === 1 ? 'new-word' : `${idOf(root)}-new`
}
