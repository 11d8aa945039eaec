import { readdirSync, statSync } from 'node:fs'
import { join } from 'node:path'

/** What is compiled and what it is compiled to. */
export interface Compiled {
  readonly root: string
  /** Below the root. */
  readonly folders: readonly string[]
  /** A file of the build, below the root. */
  readonly built: string
}

/** Whether nothing of the sources is younger than the build: neither a file nor a folder, which is as young as what last came or went. */
export function isFreshBuild({ root, folders, built }: Compiled): boolean {
  try {
    const builtMs = statSync(join(root, built)).mtimeMs
    return folders.every(folder =>
      [
        join(root, folder),
        ...readdirSync(join(root, folder), { recursive: true, withFileTypes: true }).map(entry =>
          join(entry.parentPath, entry.name),
        ),
      ].every(path => statSync(path).mtimeMs <= builtMs),
    )
  } catch {
    return false
  }
}
