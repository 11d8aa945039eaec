import { spawnSync } from 'node:child_process'
import { join } from 'node:path'
import { commandLine } from '../../src/commands/command-line.js'
import { withoutSteering } from '../../src/commands/plain-text.js'
import { refusal } from '../../src/commands/usage-wording.js'
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

/**
 * What is answered to a command line, in this process: for all that is asked of the answer and nothing of the process, which
 * takes a quarter of a second of the processor to start. `bundled-command.test.ts` holds the two against each other.
 */
export async function answered(args: readonly string[], folder: string): Promise<Run> {
  const before = process.cwd()
  let run: Run | undefined
  process.chdir(folder)
  try {
    await commandLine(args, {
      run: async running => {
        const { output, problems, exitCode } = await running
        run = { code: exitCode, out: written(output), err: written(problems) }
      },
      refuse: (message, error) => {
        if (message === null) throw error
        run = { code: 2, out: '', err: refusal(message, args[0]) }
        throw run
      },
    }).parse()
  } catch (thrown) {
    if (thrown !== run) throw thrown
  } finally {
    process.chdir(before)
  }
  if (run === undefined) throw new Error(`nothing was answered to ${args.join(' ')}`)
  return run
}

function written(text: string): string {
  return text === '' ? '' : `${withoutSteering(text)}\n`
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
