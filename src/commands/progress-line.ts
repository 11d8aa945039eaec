/** How far a long run is, on standard error: a bar on a terminal, a line an item elsewhere, nothing in the first second. */
import type { Progress } from '../door/make.js'

export interface ProgressStream {
  readonly isTTY?: boolean
  readonly columns?: number
  write(text: string): unknown
}

/** Shorter runs need no telling. */
const QUIET_MS = 1000
const BAR = 24

export interface ProgressLine {
  readonly tell: (progress: Progress) => void
  /** Takes the bar away. */
  readonly end: () => void
}

export function progressLine(stream: ProgressStream, now: () => number = Date.now): ProgressLine {
  const began = now()
  let isShown = false
  const clear = () => {
    if (isShown && stream.isTTY === true) stream.write('\r\u001B[K')
  }
  return {
    tell: progress => {
      if (now() - began < QUIET_MS) return
      if (stream.isTTY === true) stream.write(`\r\u001B[K${barOf(progress, stream.columns || 80)}`)
      else stream.write(`${counted(progress)} ${progress.item}: ${progress.step}\n`)
      isShown = true
    },
    end: clear,
  }
}

/** No wider than the terminal: a bar that breaks would stay there. */
function barOf(progress: Progress, columns: number): string {
  const filled = Math.round((BAR * progress.done) / progress.of)
  const bar = `[${'#'.repeat(filled)}${' '.repeat(BAR - filled)}]`
  return `${bar} ${counted(progress)} ${progress.item}`.slice(0, Math.max(20, columns - 1))
}

function counted({ done, of }: Progress): string {
  const width = String(of).length
  return `${String(done).padStart(width)} of ${of}`
}
