import { existsSync, readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'

/** The folder that holds package.json: found upwards from this file, so that sources and build see the same one. */
export const installationFolder = findUpwards(import.meta.dirname)

/** What `npm run build` made: the compiled program and the lexicon. */
export const buildFolder = join(installationFolder, '.build')

export const version: string = (
  JSON.parse(readFileSync(join(installationFolder, 'package.json'), 'utf8')) as { version: string }
).version

function findUpwards(folder: string): string {
  if (existsSync(join(folder, 'package.json'))) return folder
  const parent = dirname(folder)
  if (parent === folder) throw new Error('package.json of oaktag not found above its program files')
  return findUpwards(parent)
}
