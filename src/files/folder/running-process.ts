import { hostname } from 'node:os'
import { systemCode } from './file-problem.js'

/** This machine's name, fit for a file's name. */
export const machine = hostname().replace(/[^A-Za-z0-9-]/g, '_')

const runsHere = new Set<string>()
let count = 0

/** A name for one run: the process's number and a count within it, `4711.1`. It counts as running until it is ended. */
export function beginRun(): string {
  const run = `${process.pid}.${++count}`
  runsHere.add(run)
  return run
}

export function endRun(run: string): void {
  runsHere.delete(run)
}

/** Whether a run of this machine is still under way. */
export function isRunning(run: string): boolean {
  const pid = Number.parseInt(run, 10)
  if (pid === process.pid) return runsHere.has(run)
  try {
    process.kill(pid, 0)
    return true
  } catch (error) {
    return systemCode(error) !== 'ESRCH'
  }
}
