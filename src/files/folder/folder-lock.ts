import { readFile, rename, rm, writeFile } from 'node:fs/promises'
import { setTimeout } from 'node:timers/promises'
import { AnotherRunIsWriting, systemCode } from './file-problem.js'
import { isRunning, machine } from './running-process.js'

const waitMs = 20
/** A set is put in place in a fraction of a second: a minute means that something is wrong. */
const mostWaits = 3000

/** Runs the task while no other run may: those wait for the lock file to go. A dead run's lock is taken over. */
export async function withLock<T>(lockFile: string, run: string, task: () => Promise<T>): Promise<T> {
  const owner = `${machine} ${run}`
  for (let waits = 0; !(await takeLock(lockFile, owner)); waits++) {
    if (waits === mostWaits) throw new AnotherRunIsWriting(lockFile)
    await breakDeadLock(lockFile, run)
    await setTimeout(waitMs)
  }
  try {
    return await task()
  } finally {
    await rm(lockFile, { force: true })
  }
}

async function takeLock(lockFile: string, owner: string): Promise<boolean> {
  try {
    await writeFile(lockFile, owner, { flag: 'wx' })
    return true
  } catch (error) {
    if (systemCode(error) === 'EEXIST') return false
    throw error
  }
}

/** Removes the lock of a run that has died; renamed first, so that of several waiting runs only one removes it. */
async function breakDeadLock(lockFile: string, run: string): Promise<void> {
  const owner = await readFile(lockFile, 'utf8').catch(() => '')
  if (!isDead(owner)) return
  const aside = `${lockFile}.${run}`
  try {
    await rename(lockFile, aside)
  } catch (error) {
    if (systemCode(error) === 'ENOENT') return
    throw error
  }
  // Another run may have removed it and taken the lock in between: then it gets its lock back.
  if ((await readFile(aside, 'utf8')) === owner) await rm(aside)
  else await rename(aside, lockFile)
}

/** An empty lock is just being written, and one of another machine cannot be judged from here: both count as alive. */
function isDead(owner: string): boolean {
  const [name, run] = owner.split(' ')
  return name === machine && run !== undefined && !isRunning(run)
}
