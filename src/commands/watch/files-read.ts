/** Which files a run has read, and whether one of them is another by now. */
import { type FSWatcher, watch } from 'node:fs'
import { dirname, resolve } from 'node:path'
import { setTimeout } from 'node:timers/promises'
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

/** An editor may empty a file before it writes it, or write it in two goes. */
const AT_REST_MS = 20

/**
 * Whether files are at rest: those that were read `before`, and those that are `read` by now, stay for a while as they are.
 * What is made of them meanwhile is of use only then.
 */
export async function areAtRest(before: FilesRead, read: FilesRead): Promise<boolean> {
  const states = () => [...before.keys()].map(fileState).join()
  const first = states()
  await setTimeout(AT_REST_MS)
  return states() === first && !areChanged(read)
}

/** Not every disk tells of changes; one of the network often does not. */
const LOOK_AGAIN_MS = 1000

/** Waits until one of the files is another; or until it is to stop. */
export function untilChanged(read: FilesRead, signal: AbortSignal): Promise<void> {
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
