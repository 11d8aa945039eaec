import { existsSync } from 'node:fs'
import { createRequire } from 'node:module'
import { join } from 'node:path'

const { resolve } = createRequire(import.meta.url)

/**
 * A file of an installed package, looked for where Node looks, but not among what the package exports: to read that, Node opens
 * and compiles more of itself than it takes to read the file.
 */
export function packageFile(name: string, file: string): string {
  const found = (resolve.paths(name) ?? [])
    .map(folder => join(folder, name, file))
    .find(path => existsSync(path))
  return found ?? resolve(`${name}/${file}`)
}
