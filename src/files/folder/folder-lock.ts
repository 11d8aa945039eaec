import { join } from 'node:path'
import { performance } from 'node:perf_hooks'
import { setTimeout } from 'node:timers/promises'
import { AnotherRunIsWriting } from './file-problem.js'
import { type FileSystem, systemCode } from './file-system.js'
import { type Host, stateOf } from './running-process.js'

/**
 * The lock is a folder that holds one empty file, named after the run that has it. It is built aside and renamed into
 * place, so it is never seen half made, needs no room on the disk and no links; renaming fails where a lock with a run
 * in it stands. It is let go, and taken from a dead run, by removing that run's file and then the folder if it is
 * empty: neither can hit the lock of another run.
 */
export interface LockRequest {
  readonly lock: string
  /** Where the run builds its lock; a name of its own. */
  readonly aside: string
  readonly run: string
  readonly host: Host
  readonly files: FileSystem
  readonly times: LockTimes
}

/** In milliseconds. */
export interface LockTimes {
  readonly poll: number
  /** Whoever has the lock says so this often. */
  readonly beat: number
  /** So long without a beat, and a run whose process is gone has ended. */
  readonly endedAfter: number
  /** So long without a beat, and any run has. */
  readonly silentAfter: number
  /** A set is put in place in a fraction of a second: a minute means that something is wrong. */
  readonly longest: number
}

export const usualTimes: LockTimes = {
  poll: 20,
  beat: 250,
  endedAfter: 1000,
  silentAfter: 12_000,
  longest: 60_000,
}

export interface HeldLock {
  /** False where another run has taken it, as it may from a run that was stopped for a while. */
  readonly isOurs: () => Promise<boolean>
}

/** Runs the task while no other run may: those wait. */
export async function withLock<T>(request: LockRequest, task: (held: HeldLock) => Promise<T>): Promise<T> {
  const { lock, run, files, times } = request
  await waitForLock(request, times)
  const own = join(lock, run)
  const beating = setInterval(() => void files.touch(own).catch(() => undefined), times.beat)
  beating.unref()
  try {
    return await task({ isOurs: async () => (await files.look(own)) !== undefined })
  } finally {
    clearInterval(beating)
    await letGo(lock, run, files)
  }
}

async function waitForLock(request: LockRequest, times: LockTimes): Promise<void> {
  const began = performance.now()
  let seen = { sign: '', since: began }
  for (;;) {
    const found = await lockHolder(request)
    if (found === undefined && (await takeLock(request))) return
    const now = performance.now()
    if (now - began > times.longest) throw new AnotherRunIsWriting(request.lock)
    if (found !== undefined) {
      if (found.sign !== seen.sign) seen = { sign: found.sign, since: now }
      const ended = stateOf(found.run, request.host) === 'ended'
      if (now - seen.since > (ended ? times.endedAfter : times.silentAfter))
        await letGo(request.lock, found.run, request.files)
    }
    await setTimeout(times.poll)
  }
}

/** False where another run was quicker. */
async function takeLock({ lock, aside, run, files }: LockRequest): Promise<boolean> {
  try {
    await files.makeFolder(aside)
    await files.write(join(aside, run), '')
    return await renamed(files, aside, lock)
  } finally {
    await files.removeFolder(aside)
  }
}

async function renamed(files: FileSystem, from: string, to: string): Promise<boolean> {
  try {
    await files.rename(from, to)
    return true
  } catch (error) {
    // What systems say of a name that is taken differs; where nothing stands there, something else is wrong.
    if (systemCode(error) !== undefined && (await files.look(to)) !== undefined) return false
    throw error
  }
}

interface LockHolder {
  readonly run: string
  /** Changes with every beat. */
  readonly sign: string
}

/** Who has the lock; undefined where it is free by now, or held by nobody and cleared away. */
async function lockHolder({ lock, files }: LockRequest): Promise<LockHolder | undefined> {
  const found = await files.look(lock)
  if (found === undefined) return undefined
  if (found.kind !== 'folder') {
    // No run makes a lock that is a file: it holds nothing.
    await unlessSystemRefuses(files.removeFile(lock))
    return undefined
  }
  const [run] = await namesIn(lock, files)
  if (run === undefined) {
    await unlessSystemRefuses(files.removeEmptyFolder(lock))
    return undefined
  }
  const file = await files.look(join(lock, run))
  return file && { run, sign: `${run} ${file.changedMs}` }
}

/** Another run may remove the lock while this one looks at it. */
async function namesIn(lock: string, files: FileSystem): Promise<readonly string[]> {
  try {
    return await files.list(lock)
  } catch (error) {
    if (systemCode(error) === undefined) throw error
    return []
  }
}

/** What cannot be removed falls silent, and is taken from this run when it has been so for a while. */
async function letGo(lock: string, run: string, files: FileSystem): Promise<void> {
  await unlessSystemRefuses(files.removeFile(join(lock, run)))
  await unlessSystemRefuses(files.removeEmptyFolder(lock))
}

/** Another run may have cleared it by now, or renamed its own lock over the empty folder. */
async function unlessSystemRefuses(removing: Promise<void>): Promise<void> {
  try {
    await removing
  } catch (error) {
    if (systemCode(error) === undefined) throw error
  }
}
