import { type ReadLine, readLine } from './shared-outlines.js'

/** Lines of text that were taken apart into words in earlier runs. */
export interface KeptLines {
  readonly read: ReadLine
  /** Lets go of lines that nobody has asked for since the last call. */
  readonly letGo: () => void
}

export function keptLines(): KeptLines {
  let kept = new Map<string, ReturnType<ReadLine>>()
  let asked = new Map<string, ReturnType<ReadLine>>()
  return {
    read: d => {
      if (asked.has(d)) return asked.get(d)
      const words = kept.has(d) ? kept.get(d) : readLine(d)
      asked.set(d, words)
      return words
    },
    letGo: () => {
      kept = asked
      asked = new Map()
    },
  }
}
