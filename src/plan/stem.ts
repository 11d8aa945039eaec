import { basename, extname } from 'node:path'

/** Names the output folder: never empty, never `.` or `..`; of a plan on standard input it is `plan`. */
export function stemOf(file: string): string {
  const stem = basename(file, extname(file)).replace(/^\.+/, '').trim()
  return stem === '' || stem === 'standard input' ? 'plan' : stem
}
