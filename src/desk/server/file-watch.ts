/** Notices that another program has saved the plan, or a file that it names. */
import { type FSWatcher, watch } from 'node:fs'
import { fileState } from '../../oaktag.js'

/** Not every disk tells of changes; one of the network often does not. */
const LOOK_AGAIN_MS = 1000
/** An editor may write in two goes. */
const AT_REST_MS = 25

export function watchFiles(
  folder: string,
  files: () => Iterable<string>,
  changed: (files: readonly string[]) => void,
): { readonly look: () => void; readonly close: () => void } {
  const states = new Map<string, string>()
  let waiting: NodeJS.Timeout | undefined
  const look = (): void => {
    const others: string[] = []
    for (const file of files()) {
      const state = fileState(file)
      if (states.has(file) && states.get(file) !== state) others.push(file)
      states.set(file, state)
    }
    if (others.length > 0) changed(others)
  }
  const soon = (): void => {
    clearTimeout(waiting)
    waiting = setTimeout(look, AT_REST_MS)
  }
  look()
  const timer = setInterval(look, LOOK_AGAIN_MS)
  let watcher: FSWatcher | undefined
  try {
    watcher = watch(folder, soon).on('error', () => undefined)
  } catch {
    // A folder that cannot be watched is looked at by the clock.
  }
  return {
    look,
    close: () => {
      clearInterval(timer)
      clearTimeout(waiting)
      watcher?.close()
    },
  }
}
