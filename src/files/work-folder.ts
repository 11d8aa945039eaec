import { mkdir, readdir, rename, rm, rmdir } from 'node:fs/promises'
import { hostname } from 'node:os'
import { join } from 'node:path'
import { discardSet } from './discard-set.js'
import { systemCode } from './file-problem.js'

/** Hidden folders that one run uses beside the plan's folder: one to build in, one for the set it replaces. */
export interface WorkFolder {
  readonly building: string
  readonly replaced: string
  /** Removes the set that was replaced; returns the new paths of files in it that were not ours. */
  discardReplaced(): Promise<readonly string[]>
  /** Removes whatever is left. */
  remove(): Promise<void>
}

const machine = hostname().replace(/[^A-Za-z0-9-]/g, '_')
const inUse = new Set<string>()
let runs = 0

/** Makes the folder to build in, after clearing up what a killed run of the same plan may have left. */
export async function openWorkFolder(outFolder: string, stem: string): Promise<WorkFolder> {
  const createdFolder = await mkdir(outFolder, { recursive: true })
  await clearAfterKilledRuns(outFolder, stem)
  const run = `${process.pid}.${++runs}`
  const building = join(outFolder, workName(stem, run, 'new'))
  const replaced = join(outFolder, workName(stem, run, 'old'))
  inUse.add(run)
  await mkdir(building)
  return {
    building,
    replaced,
    discardReplaced: () => discardSet(replaced, otherFilesFolder(outFolder, stem)),
    async remove() {
      await rm(building, { recursive: true, force: true })
      inUse.delete(run)
      if (createdFolder !== undefined) await removeEmptyFolders(outFolder, createdFolder)
    },
  }
}

function otherFilesFolder(outFolder: string, stem: string): string {
  return join(outFolder, `${stem}-other-files`)
}

function workName(stem: string, run: string, role: 'new' | 'old'): string {
  return `.oaktag.${stem}.${machine}.${run}.${role}`
}

/**
 * A run killed while it was writing leaves its building folder; one killed in the instant between the two
 * renames of the swap leaves the last good set beside its place, where it is put back.
 */
async function clearAfterKilledRuns(outFolder: string, stem: string): Promise<void> {
  const prefix = `.oaktag.${stem}.${machine}.`
  for (const name of (await readdir(outFolder)).sort()) {
    const run = name.startsWith(prefix) ? /^(\d+)\.\d+(?=\.(new|old)$)/.exec(name.slice(prefix.length)) : null
    if (run === null || isRunning(run[0], Number(run[1]))) continue
    const folder = join(outFolder, name)
    if (run[2] === 'old') {
      await putBack(folder, join(outFolder, stem))
      await discardSet(folder, otherFilesFolder(outFolder, stem))
    } else await rm(folder, { recursive: true, force: true })
  }
}

async function putBack(replaced: string, folder: string): Promise<void> {
  try {
    await rename(replaced, folder)
  } catch (error) {
    // The plan's folder is there and holds a set: the one put aside is not missed.
    if (!['ENOTEMPTY', 'EEXIST', 'EPERM', 'ENOENT'].includes(systemCode(error) ?? '')) throw error
  }
}

function isRunning(run: string, pid: number): boolean {
  if (pid === process.pid) return inUse.has(run)
  try {
    process.kill(pid, 0)
    return true
  } catch (error) {
    return systemCode(error) !== 'ESRCH'
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
    await removeEmptyFolders(join(folder, '..'), outermost)
}
