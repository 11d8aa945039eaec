import { dirname, join, parse } from 'node:path'
import type { FileSystem } from './file-system.js'
import { makeFolders } from './make-folders.js'
import { filesOfSet, isSystemLitter, manifestIn } from './previous-set.js'

export interface Discarding {
  /** A set that has been replaced, whole. */
  readonly folder: string
  /** A free name to remove it under: what stands there is known to be of no use, however little of it is left. */
  readonly gone: string
  /** Where files that are not ours to delete are moved. */
  readonly keepIn: string
}

/**
 * Removes a set that has been replaced. Files that oaktag did not put there are moved to `keepIn` first, and their new
 * paths returned. Does nothing where the folder is not there.
 */
export async function discardSet(discarding: Discarding, files: FileSystem): Promise<readonly string[]> {
  const kept = await setAside(discarding, files)
  await files.removeFolder(discarding.gone)
  return kept
}

/** The same up to the set's name that says that it is of no use: from then on it may be removed at any time, by any run. */
export async function setAside(discarding: Discarding, files: FileSystem): Promise<readonly string[]> {
  const { folder, gone, keepIn } = discarding
  if ((await files.look(folder)) === undefined) return []
  const kept: string[] = []
  for (const path of await strangersIn(folder, files)) {
    const target = await freePath(join(keepIn, path), files)
    await makeFolders(dirname(target), files)
    await files.rename(join(folder, path), target)
    kept.push(target)
  }
  await files.rename(folder, gone)
  return kept
}

/** Paths, from the folder, of files that its manifest does not list. */
async function strangersIn(folder: string, files: FileSystem): Promise<readonly string[]> {
  const manifest = await manifestIn(folder, files)
  const ours = new Set(manifest.ok && manifest.value !== null ? filesOfSet(manifest.value) : [])
  return (await filesIn(folder, '', files)).filter(path => !ours.has(path))
}

/** Paths with `/` between their parts, in order; a link is a file, whatever it leads to. */
async function filesIn(folder: string, below: string, files: FileSystem): Promise<readonly string[]> {
  const found: string[] = []
  for (const name of [...(await files.list(join(folder, below)))].sort()) {
    if (isSystemLitter(name)) continue
    const path = below === '' ? name : `${below}/${name}`
    const isFolder = (await files.look(join(folder, path)))?.kind === 'folder'
    found.push(...(isFolder ? await filesIn(folder, path, files) : [path]))
  }
  return found
}

/** The path itself, or with a number where a file stands there already: `notes-2.txt`. */
async function freePath(path: string, files: FileSystem): Promise<string> {
  const { dir, name, ext } = parse(path)
  for (let count = 1; ; count++) {
    const candidate = count === 1 ? path : join(dir, `${name}-${count}${ext}`)
    if ((await files.look(candidate)) === undefined) return candidate
  }
}
