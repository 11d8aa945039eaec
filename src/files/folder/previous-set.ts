import { lstat, readdir, readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { fail, succeed } from '../../outcomes.js'
import { errorAt, type Outcome } from '../../problems.js'
import type { Manifest } from '../manifest.js'
import { systemCode } from './file-problem.js'

/**
 * The manifest of the set that stands in the plan's folder, `null` where there is nothing yet. A folder with
 * files in it but no manifest of ours belongs to somebody else, and is refused.
 */
export async function readPreviousSet(folder: string): Promise<Outcome<Manifest | null>> {
  if (!(await exists(folder))) return succeed(null)
  if (!(await lstat(folder)).isDirectory()) return refused(folder, 'a file stands where a folder is needed')
  const names = (await readdir(folder)).filter(name => !isSystemLitter(name))
  if (names.length === 0) return succeed(null)
  if (!names.includes('manifest.json'))
    return refused(folder, 'this folder holds files that oaktag did not make')
  const text = await readFile(join(folder, 'manifest.json'), 'utf8')
  const manifest = parseManifest(text)
  if (manifest === undefined)
    return refused(folder, 'the manifest.json in this folder is not one of oaktag’s')
  return succeed(manifest)
}

async function exists(path: string): Promise<boolean> {
  try {
    await lstat(path)
    return true
  } catch (error) {
    if (systemCode(error) === 'ENOENT') return false
    throw error
  }
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

export function parseManifest(text: string): Manifest | undefined {
  try {
    const value: unknown = JSON.parse(text)
    return isManifest(value) ? value : undefined
  } catch {
    return undefined
  }
}

function isManifest(value: unknown): value is Manifest {
  if (!isRecord(value) || typeof value.oaktag !== 'string' || !Array.isArray(value.items)) return false
  return value.items.every(
    item => isRecord(item) && typeof item.name === 'string' && Array.isArray(item.pages),
  )
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null
}

function refused(folder: string, message: string): Outcome<never> {
  const advice = 'Choose another folder with --out, or move it away. Nothing was changed.'
  return fail(errorAt({ file: folder }, message, advice))
}
