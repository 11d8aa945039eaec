import { mkdir, readdir, rename, rm, rmdir } from 'node:fs/promises'
import { dirname, join } from 'node:path'
import { discardSet } from './discard-set.js'
import { systemCode } from './file-problem.js'
import { withLock } from './folder-lock.js'
import { makeFolders } from './make-folders.js'
import { beginRun, endRun, isRunning, machine } from './running-process.js'

/** Hidden folders that one run uses beside the plan's folder: one to build in, one for the set it replaces. */
export interface WorkFolder {
  readonly building: string
  readonly replaced: string
  /** Runs the task while no other run of the plan reads or replaces its set. */
  alone<T>(task: () => Promise<T>): Promise<T>
  /** Removes the set that was replaced; returns the new paths of files in it that were not ours. */
  discardReplaced(): Promise<readonly string[]>
  /** Removes whatever is left. */
  remove(): Promise<void>
}

/** Makes the folder to build in, after clearing up what a killed run of the same plan may have left. */
export async function openWorkFolder(outFolder: string, stem: string): Promise<WorkFolder> {
  const createdFolder = await makeFolders(outFolder)
  const run = beginRun()
  const prefix = join(outFolder, `.oaktag.${stem}`)
  const building = `${prefix}.${machine}.${run}.new`
  const replaced = `${prefix}.${machine}.${run}.old`
  const work: WorkFolder = {
    building,
    replaced,
    alone: task => withLock(`${prefix}.lock`, run, task),
    discardReplaced: () => discardSet(replaced, otherFilesFolder(outFolder, stem)),
    async remove() {
      await rm(building, { recursive: true, force: true })
      endRun(run)
      if (createdFolder !== undefined) await removeEmptyFolders(outFolder, createdFolder)
    },
  }
  try {
    await work.alone(async () => {
      await clearAfterKilledRuns(outFolder, stem)
      await mkdir(building)
    })
    return work
  } catch (error) {
    await work.remove()
    throw error
  }
}

function otherFilesFolder(outFolder: string, stem: string): string {
  return join(outFolder, `${stem}-other-files`)
}

/**
 * A run killed while it was writing leaves its building folder; one killed in the instant between the two
 * renames of the swap leaves the last good set beside its place, where it is put back. The folders of another
 * machine, on a shared disk, are let be.
 */
async function clearAfterKilledRuns(outFolder: string, stem: string): Promise<void> {
  const prefix = `.oaktag.${stem}.${machine}.`
  for (const name of (await readdir(outFolder)).sort()) {
    const rest = name.startsWith(prefix) ? name.slice(prefix.length) : ''
    const [, run, role] = /^(\d+\.\d+)\.(new|old)$/.exec(rest) ?? []
    if (run === undefined || isRunning(run)) continue
    const path = join(outFolder, name)
    if (role === 'old') {
      await putBack(path, join(outFolder, stem))
      await discardSet(path, otherFilesFolder(outFolder, stem))
    } else await rm(path, { recursive: true, force: true })
  }
}

async function putBack(replaced: string, folder: string): Promise<void> {
  try {
    await rename(replaced, folder)
  } catch (error) {
    // The plan's folder is there and holds a set: the one put aside is not missed.
    if (!['ENOTEMPTY', 'EEXIST', 'EPERM'].includes(systemCode(error) ?? '')) throw error
  }
}

/** Takes back the folders made for `--out`, from the inside outwards, as far as they are empty. */
async function removeEmptyFolders(folder: string, outermost: string): Promise<void> {
  try {
    await rmdir(folder)
  } catch {
    return
  }
  if (folder !== outermost && folder.startsWith(outermost))
    await removeEmptyFolders(dirname(folder), outermost)
}
