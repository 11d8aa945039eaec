/** Which files a run has read, and whether one of them is another by now. */
import { type FSWatcher, watch } from 'node:fs'
import { dirname, resolve } from 'node:path'
import type { FileAccess } from '../../door/plans.js'
import { fileState } from '../../door/watch.js'

/** What tells one state of a file from the next, by its path; a file that is missing may come. */
export type FilesRead = ReadonlyMap<string, string>

/** The files, and a list of what is read of them, each as it is when it is read first. */
export function noted(files: FileAccess): { readonly files: FileAccess; readonly read: FilesRead } {
  const read = new Map<string, string>()
  const note = (path: string): void => {
    const whole = resolve(path)
    if (!read.has(whole)) read.set(whole, fileState(whole))
  }
  return {
    read,
    files: {
      read: (path, limitBytes) => {
        note(path)
        return files.read(path, limitBytes)
      },
      beginning: (path, count) => {
        note(path)
        return files.beginning(path, count)
      },
    },
  }
}

export function areChanged(read: FilesRead): boolean {
  return [...read].some(([path, state]) => fileState(path) !== state)
}

/** Not every disk tells of changes; one of the network often does not. */
const LOOK_AGAIN_MS = 1000

/** An editor may empty a file before it writes it, or write it in two goes. */
const AT_REST_MS = 20

/** Waits until one of the files is another, and at rest again; or until it is to stop. */
export async function untilChanged(read: FilesRead, signal: AbortSignal): Promise<void> {
  await firstChange(read, signal)
  for (let before = ''; !signal.aborted; ) {
    const now = [...read.keys()].map(fileState).join()
    if (now === before) return
    before = now
    await new Promise(done => setTimeout(done, AT_REST_MS))
  }
}

function firstChange(read: FilesRead, signal: AbortSignal): Promise<void> {
  return new Promise(done => {
    const watchers: FSWatcher[] = []
    const end = (): void => {
      for (const watcher of watchers) watcher.close()
      clearInterval(timer)
      signal.removeEventListener('abort', end)
      done()
    }
    const look = (): void => {
      if (signal.aborted || areChanged(read)) end()
    }
    const timer = setInterval(look, LOOK_AGAIN_MS)
    signal.addEventListener('abort', end)
    for (const folder of new Set([...read.keys()].map(dirname))) {
      try {
        watchers.push(watch(folder, look).on('error', () => undefined))
      } catch {
        // A folder that is not there, or cannot be watched, is looked at by the clock.
      }
    }
    look()
  })
}
