import { join } from 'node:path'
import { fail, succeed } from '../../outcomes.js'
import { errorAt, type Outcome } from '../../problems.js'
import type { Manifest } from '../manifest.js'
import type { FileSystem } from './file-system.js'
import { parseManifest } from './read-manifest.js'

/** Hundreds of times what the largest week takes. */
const largestManifestBytes = 300_000_000

/**
 * The manifest of the set that stands in the plan's folder, `null` where there is nothing yet. A folder with
 * files in it but no manifest of ours belongs to somebody else, and is refused.
 */
export async function readPreviousSet(folder: string, files: FileSystem): Promise<Outcome<Manifest | null>> {
  const found = await files.look(folder)
  if (found === undefined) return succeed(null)
  if (found.kind === 'other')
    return refused(folder, 'a link or a device stands where the plan’s folder is needed')
  if (found.kind === 'file') return refused(folder, 'a file stands where a folder is needed')
  return manifestIn(folder, files)
}

/** The manifest in a folder that is there; `null` where the folder is empty. */
export async function manifestIn(folder: string, files: FileSystem): Promise<Outcome<Manifest | null>> {
  const names = (await files.list(folder)).filter(name => !isSystemLitter(name))
  if (names.length === 0) return succeed(null)
  const path = join(folder, 'manifest.json')
  const found = await files.look(path)
  if (found === undefined) return refused(folder, 'this folder holds files that oaktag did not make')
  // To read a pipe is to wait for its other end, perhaps for ever.
  const manifest =
    found.kind === 'file' && found.sizeBytes <= largestManifestBytes
      ? parseManifest(await files.readText(path))
      : undefined
  if (manifest === undefined)
    return refused(folder, 'the manifest.json in this folder is not one of oaktag’s')
  return succeed(manifest)
}

/** Files that desktop systems strew into folders by themselves. */
export function isSystemLitter(name: string): boolean {
  return ['.ds_store', 'thumbs.db', 'desktop.ini'].includes(name.toLowerCase())
}

/** Every file that the set consists of, as paths from the plan's folder. */
export function filesOfSet(manifest: Manifest): readonly string[] {
  const listed = manifest.items.flatMap(item => [
    item.pdf,
    ...item.pages.flatMap(page => [page.svg, page.png]),
  ])
  const prints = manifest.prints?.map(print => print.pdf) ?? []
  return ['manifest.json', 'index.html', manifest.pdf, ...prints, ...listed].filter(
    path => path !== undefined,
  )
}

function refused(folder: string, message: string): Outcome<never> {
  const advice = 'Choose another folder with --out, or move it away. Nothing was changed.'
  return fail(errorAt({ file: folder }, message, advice))
}
