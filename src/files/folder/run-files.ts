import { createHash } from 'node:crypto'
import { join } from 'node:path'
import { runName } from './running-process.js'

/**
 * Hidden names that a run uses beside the plan's folder: where it builds (`new`), the whole set that it replaces
 * (`old`), one that is being removed and is of no use any more (`gone`), and its lock before it is in place (`lock`).
 */
export type RunRole = 'new' | 'old' | 'gone' | 'lock'

export function runFile(outFolder: string, stem: string, run: string, role: RunRole): string {
  return join(outFolder, `${prefixOf(stem)}.${run}.${role}`)
}

export function lockOf(outFolder: string, stem: string): string {
  return join(outFolder, `${prefixOf(stem)}.lock`)
}

/** The run and the role that such a name tells of; undefined for any other name. */
export function readRunFile(name: string, stem: string): { run: string; role: RunRole } | undefined {
  const prefix = `${prefixOf(stem)}.`
  const [, run, role] = (name.startsWith(prefix) && runFileEnd.exec(name.slice(prefix.length))) || []
  return run === undefined ? undefined : { run, role: roles.find(each => each === role)! }
}

const roles: readonly RunRole[] = ['new', 'old', 'gone', 'lock']
const runFileEnd = new RegExp(`^(${runName.source})\\.(${roles.join('|')})$`)

/** A stem that would make the name longer than systems allow (255 bytes) is cut, and told apart by its hash. */
function prefixOf(stem: string): string {
  if (Buffer.byteLength(stem) <= 120) return `.oaktag.${stem}`
  const hash = createHash('sha256').update(stem).digest('hex').slice(0, 16)
  return `.oaktag.${[...stem].slice(0, 24).join('')}-${hash}`
}
