import { access, mkdir, readdir, readFile, rename, rm } from 'node:fs/promises'
import { dirname, join, parse, relative } from 'node:path'
import { systemCode } from './file-problem.js'
import { filesOfSet, isSystemLitter, parseManifest } from './previous-set.js'

/**
 * Removes a set that has been replaced. Files that oaktag did not put there are not ours to delete: they are
 * moved to `keepIn`, and their new paths returned. Does nothing where the folder is not there.
 */
export async function discardSet(folder: string, keepIn: string): Promise<readonly string[]> {
  const strangers = await strangersIn(folder)
  const kept: string[] = []
  for (const path of strangers) {
    const target = await freePath(join(keepIn, path))
    await mkdir(dirname(target), { recursive: true })
    await rename(join(folder, path), target)
    kept.push(target)
  }
  await rm(folder, { recursive: true, force: true })
  return kept
}

/** Paths, from the folder, of files that its manifest does not list. */
async function strangersIn(folder: string): Promise<readonly string[]> {
  try {
    const entries = await readdir(folder, { recursive: true, withFileTypes: true })
    const manifest = parseManifest(await readFile(join(folder, 'manifest.json'), 'utf8').catch(() => ''))
    const ours = new Set(manifest ? filesOfSet(manifest) : [])
    return entries
      .filter(entry => !entry.isDirectory() && !isSystemLitter(entry.name))
      .map(entry => relative(folder, join(entry.parentPath, entry.name)))
      .filter(path => !ours.has(path.replaceAll('\\', '/')))
      .sort()
  } catch (error) {
    if (systemCode(error) === 'ENOENT') return []
    throw error
  }
}

/** The path itself, or with a number where a file stands there already: `notes-2.txt`. */
async function freePath(path: string): Promise<string> {
  const { dir, name, ext } = parse(path)
  for (let count = 1; ; count++) {
    const candidate = count === 1 ? path : join(dir, `${name}-${count}${ext}`)
    const taken = await access(candidate).then(
      () => true,
      () => false,
    )
    if (!taken) return candidate
  }
}
