import { spawnSync } from 'node:child_process'
import { join } from 'node:path'
import { buildFolder } from '../../src/installation.js'

export interface Run {
  readonly code: number | null
  readonly out: string
  readonly err: string
}

export const commandFile = join(buildFolder, 'src/start.cjs')

/** How far a run is: told after a second, so it comes or not as the machine is quick or slow. */
const progress = /^\d+ of \d+ \S.*: (?:laid out|written)\n/gm

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
  return { code: run.status, out: run.stdout, err: run.stderr.replace(progress, '') }
}
