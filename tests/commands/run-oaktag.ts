import { spawnSync } from 'node:child_process'
import { join } from 'node:path'
import { buildFolder } from '../../src/installation.js'

export interface Run {
  readonly code: number | null
  readonly out: string
  readonly err: string
}

/** Runs the built command as a teacher's terminal would; `npm ci` builds it. */
export function oaktag(args: readonly string[], folder: string): Run {
  const run = spawnSync(process.execPath, [join(buildFolder, 'src/cli.js'), ...args], {
    cwd: folder,
    encoding: 'utf8',
  })
  return { code: run.status, out: run.stdout, err: run.stderr }
}
