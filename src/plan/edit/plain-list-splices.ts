/** Changes of a list with a word a line; notes behind a `#` stay. */
import { plainListEntries } from '../words/plain-list.js'
import type { Entry } from '../yaml/entry.js'
import { lineStart, linesAt, nextLine, type Splice } from './lines.js'
import type { PlanData, PlanEdit } from './plan-edit.js'

/** Undefined where a line cannot hold it. */
export function plainListSplices(name: string, text: string, edit: PlanEdit): readonly Splice[] | undefined {
  const starts = plainListEntries(name, text).map(entry => startOf(entry, text))
  const lineOf = (index: number) => {
    const at = starts[index]
    return at === undefined ? undefined : { start: lineStart(text, at), end: nextLine(text, at), at }
  }
  switch (edit.kind) {
    case 'set': {
      const [, index, ...more] = edit.path
      const line = typeof index === 'number' && more.length === 0 ? lineOf(index) : undefined
      if (line === undefined || typeof edit.value !== 'string') return undefined
      const length = wordIn(text, line.at, line.end).length
      return [{ start: line.at, end: line.at + length, put: edit.value }]
    }
    case 'remove': {
      const [, index, ...more] = edit.path
      const line = typeof index === 'number' && more.length === 0 ? lineOf(index) : undefined
      if (line === undefined) return undefined
      const note = text.slice(line.at + wordIn(text, line.at, line.end).length, line.end).trimStart()
      return [{ start: line.start, end: line.end, put: note }]
    }
    case 'insert': {
      const words = edit.values.flatMap(value => textAlone(value) ?? [])
      if (edit.path.length !== 1 || words.length !== edit.values.length) return undefined
      const [next, last] = [lineOf(edit.at), lineOf(starts.length - 1)]
      return [linesAt(text, next?.start ?? last?.end ?? text.length, 0, words)]
    }
    case 'move': {
      const line = lineOf(edit.from)
      const beside = lineOf(edit.to)
      if (edit.path.length !== 1 || line === undefined || beside === undefined) return undefined
      const own = text.slice(line.start, line.end).replace(/\n$/, '')
      const at = edit.to > edit.from ? beside.end : beside.start
      return [{ start: line.start, end: line.end, put: '' }, linesAt(text, at, 0, [own])]
    }
  }
}

function startOf({ place }: Entry, text: string): number {
  const lines = text.split('\n', (place.line ?? 1) - 1)
  return lines.reduce((sum, line) => sum + line.length + 1, 0) + (place.column ?? 1) - 1
}

/** What stands before a note, and before the line's end. */
function wordIn(text: string, at: number, end: number): string {
  return text
    .slice(at, end)
    .replace(/\s#[\s\S]*$/, '')
    .trimEnd()
}

function textAlone(value: PlanData): string | undefined {
  return typeof value === 'string' ? value : undefined
}
