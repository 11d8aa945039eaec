import { createHash, randomBytes } from 'node:crypto'
import { readFileSync, readlinkSync } from 'node:fs'
import { hostname, networkInterfaces } from 'node:os'
import { systemCode } from './file-system.js'

/** Where a run runs; passed in, so that two runs that take each other for themselves can be tried. */
export interface Host {
  /** Unlike that of any other machine or container whose processes are numbered apart. */
  readonly machine: string
  readonly processId: number
  /** Letters and digits, never the same twice. */
  readonly random: () => string
  readonly hasProcess: (id: number) => boolean
}

export interface Run {
  /** Unlike that of any other run: machine, process and chance, `3f2a90c1-4711-k3xw92ab7q`. */
  readonly name: string
  readonly end: () => void
}

export const runName = /[0-9a-f]{8}-\d+-[0-9a-z]{10}/

export const thisHost: Host = {
  machine: machineName(),
  processId: process.pid,
  random: () =>
    BigInt(`0x${randomBytes(8).toString('hex')}`)
      .toString(36)
      .padStart(13, '0')
      .slice(-10),
  hasProcess(id) {
    try {
      process.kill(id, 0)
      return true
    } catch (error) {
      return systemCode(error) !== 'ESRCH'
    }
  },
}

const runsHere = new Set<string>()

/** It counts as running until it is ended. */
export function beginRun(host: Host): Run {
  const name = `${host.machine}-${host.processId}-${host.random()}`
  runsHere.add(name)
  return { name, end: () => runsHere.delete(name) }
}

/**
 * Whether a run is under way. A process number is given to another process in time, and means nothing on another
 * machine: only a number of this machine that no process has proves a run's end.
 */
export function stateOf(run: string, host: Host): 'running' | 'ended' | 'unknown' {
  if (runsHere.has(run)) return 'running'
  const [machine, id] = run.split('-')
  if (machine !== host.machine || Number(id) === host.processId) return 'unknown'
  return host.hasProcess(Number(id)) ? 'unknown' : 'ended'
}

/**
 * On Linux the boot and the space of process numbers, which differs from container to container even where their
 * hosts' names are the same; elsewhere the host and its network cards. Where neither is told, by chance.
 */
function machineName(): string {
  const told = process.platform === 'linux' ? linuxProcessSpace() : hostAndCards()
  return createHash('sha256')
    .update(told ?? randomBytes(16))
    .digest('hex')
    .slice(0, 8)
}

function linuxProcessSpace(): string | undefined {
  try {
    return `${readFileSync('/proc/sys/kernel/random/boot_id', 'utf8')} ${readlinkSync('/proc/self/ns/pid')}`
  } catch {
    return undefined
  }
}

function hostAndCards(): string {
  const cards = Object.values(networkInterfaces()).flatMap(each => each ?? [])
  const addresses = cards.filter(card => !card.internal).map(card => card.mac)
  return [process.platform, hostname(), ...new Set(addresses)].sort().join(' ')
}
