import { spawnSync } from 'node:child_process'

/**
 * Whether a program of the system is there. Where it is missing a check says so and is skipped; with
 * OAKTAG_REQUIRE_ALL=1, as in CI, a missing program is a failure.
 */
export function hasProgram(name: string): boolean {
  const found = spawnSync('which', [name]).status === 0
  if (found) return true
  if (process.env.OAKTAG_REQUIRE_ALL === '1')
    throw new Error(`${name} is needed for this check and is missing`)
  process.stderr.write(`skipped: ${name} is not installed, so its checks are left out\n`)
  return false
}

/** Runs a program and gives what it prints; anything but success throws, with what it printed. */
export function runProgram(name: string, args: readonly string[], env: NodeJS.ProcessEnv = {}): string {
  const result = spawnSync(name, args, {
    encoding: 'utf8',
    maxBuffer: 2 ** 28,
    env: { ...process.env, ...env },
  })
  if (result.status !== 0) throw new Error(`${name} failed: ${result.stdout}${result.stderr}`)
  return result.stdout
}
