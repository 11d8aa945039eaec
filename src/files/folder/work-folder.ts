import { dirname, join } from 'node:path'
import { clearAfterEndedRuns } from './clear-after-ended-runs.js'
import type { Discarding } from './discard-set.js'
import { type FileSystem, systemCode } from './file-system.js'
import { type HeldLock, type LockTimes, withLock } from './folder-lock.js'
import { makeFolders } from './make-folders.js'
import { lockOf, runFile } from './run-files.js'
import { beginRun, type Host } from './running-process.js'

/** Hidden folders that one run uses beside the plan's folder: one to build in, one for the set it replaces. */
export interface WorkFolder {
  readonly building: string
  readonly replaced: string
  /** How the set that was replaced goes. */
  readonly discarding: Discarding
  /** Runs the task while no other run of the plan reads or replaces its set. */
  alone<T>(task: (held: HeldLock) => Promise<T>): Promise<T>
  /** Removes whatever is left. */
  remove(): Promise<void>
}

export interface WorkRequest {
  readonly outFolder: string
  readonly stem: string
  readonly host: Host
  /** As the system answers at once. */
  readonly files: FileSystem
  /** The same, tried again where another program holds a file. */
  readonly patient: FileSystem
  readonly lockTimes: LockTimes
}

/** Another run may take back the out folder that it made, just when this one has found it there. */
const mostTries = 5

/** Makes the folder to build in, after clearing up what a killed run of the same plan may have left. */
export async function openWorkFolder(request: WorkRequest): Promise<WorkFolder> {
  for (let tries = 1; ; tries++) {
    try {
      return await openOnce(request)
    } catch (error) {
      if (tries === mostTries || systemCode(error) !== 'ENOENT') throw error
    }
  }
}

async function openOnce({
  outFolder,
  stem,
  host,
  files,
  patient,
  lockTimes,
}: WorkRequest): Promise<WorkFolder> {
  const createdFolder = await makeFolders(outFolder, files)
  const run = beginRun(host)
  const place = (role: 'new' | 'old' | 'gone' | 'lock') => runFile(outFolder, stem, run.name, role)
  const lock = {
    lock: lockOf(outFolder, stem),
    aside: place('lock'),
    run: run.name,
    host,
    files,
    times: lockTimes,
  }
  const [building, replaced] = [place('new'), place('old')]
  const keepIn = join(outFolder, `${stem}-other-files`)
  let made = false
  const work: WorkFolder = {
    building,
    replaced,
    discarding: { folder: replaced, gone: place('gone'), keepIn },
    alone: task => withLock(lock, task),
    async remove() {
      try {
        if (made) await patient.removeFolder(building)
      } finally {
        run.end()
        if (createdFolder !== undefined) await removeEmptyFolders(outFolder, createdFolder, files)
      }
    },
  }
  try {
    await work.alone(async () => {
      await clearAfterEndedRuns({ outFolder, stem, keepIn, host, files: patient })
      await files.makeFolder(building)
      made = true
    })
    return work
  } catch (error) {
    await work.remove()
    throw error
  }
}

/** Takes back the folders made for `--out`, from the inside outwards, as far as they are empty. */
async function removeEmptyFolders(folder: string, outermost: string, files: FileSystem): Promise<void> {
  try {
    await files.removeEmptyFolder(folder)
  } catch {
    return
  }
  if (folder !== outermost && folder.startsWith(outermost))
    await removeEmptyFolders(dirname(folder), outermost, files)
}
