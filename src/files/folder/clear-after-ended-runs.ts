import { join } from 'node:path'
import { discardSet } from './discard-set.js'
import { type FileSystem, systemCode } from './file-system.js'
import { type RunRole, readRunFile, runFile } from './run-files.js'
import { type Host, stateOf } from './running-process.js'

/** No run takes a day: what one of another machine or container left is cleared away after it. */
const longestRunMs = 24 * 60 * 60 * 1000

export interface Clearing {
  readonly outFolder: string
  readonly stem: string
  /** Where files that are not ours are moved. */
  readonly keepIn: string
  readonly host: Host
  readonly files: FileSystem
}

/**
 * Clears up after runs that were killed, for the run that has the lock. Sets are put aside and removed under the lock
 * alone, so whoever put one aside has ended: the newest goes back where the plan's folder is missing, the others are
 * removed. Folders to build in are used outside the lock: they are let be until their run is known to have ended.
 */
export async function clearAfterEndedRuns(clearing: Clearing): Promise<void> {
  const { outFolder, stem, files } = clearing
  const folder = join(outFolder, stem)
  const left = await leftBehind(clearing)
  const newest = left.find(each => each.role === 'old')
  if (newest !== undefined && (await files.look(folder)) === undefined)
    await files.rename(newest.path, folder)
  for (const each of left)
    try {
      await clear(each, clearing)
    } catch (error) {
      // What another program holds open waits for the next run; this one does without.
      if (systemCode(error) === undefined) throw error
    }
}

interface LeftBehind {
  readonly path: string
  readonly run: string
  readonly role: RunRole
  readonly changedMs: number
}

/** The newest first. */
async function leftBehind({ outFolder, stem, files }: Clearing): Promise<readonly LeftBehind[]> {
  const left: LeftBehind[] = []
  for (const name of await files.list(outFolder)) {
    const found = readRunFile(name, stem)
    const path = join(outFolder, name)
    const standing = found && (await files.look(path))
    if (standing !== undefined) left.push({ ...found!, path, changedMs: standing.changedMs })
  }
  return left.sort((a, b) => b.changedMs - a.changedMs)
}

async function clear({ path, run, role, changedMs }: LeftBehind, clearing: Clearing): Promise<void> {
  const { outFolder, stem, keepIn, host, files } = clearing
  if (role === 'old') {
    await discardSet({ folder: path, gone: runFile(outFolder, stem, run, 'gone'), keepIn }, files)
    return
  }
  const state = stateOf(run, host)
  const hasEnded = state === 'ended' || (state === 'unknown' && Date.now() - changedMs > longestRunMs)
  if (role === 'gone' || hasEnded) await files.removeFolder(path)
}
