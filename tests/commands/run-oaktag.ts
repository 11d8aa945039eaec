import { spawnSync } from 'node:child_process'
import { join } from 'node:path'
import { buildFolder } from '../../src/installation.js'

export interface Run {
  readonly code: number | null
  readonly out: string
  readonly err: string
}

export const commandFile = join(buildFolder, 'src/cli.js')

interface Circumstances {
  /** Arguments for Node itself. */
  readonly node?: readonly string[]
  readonly env?: Readonly<Record<string, string>>
}

/** Runs the built command as a teacher's terminal would; `npm ci` builds it. */
export function oaktag(
  args: readonly string[],
  folder: string,
  { node = [], env = {} }: Circumstances = {},
): Run {
  const run = spawnSync(process.execPath, [...node, commandFile, ...args], {
    cwd: folder,
    encoding: 'utf8',
    env: { ...process.env, ...env },
  })
  return { code: run.status, out: run.stdout, err: run.stderr }
}
