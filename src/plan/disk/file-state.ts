import { statSync } from 'node:fs'

/** What tells one state of a file from the next; a file that is missing may come. */
export function fileState(path: string): string {
  try {
    const { mtimeMs, size, ino } = statSync(path)
    return `${mtimeMs} ${size} ${ino}`
  } catch {
    return 'missing'
  }
}
