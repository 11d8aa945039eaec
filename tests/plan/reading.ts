/** Reading plans in tests: a folder in memory, and problems in the form that a teacher sees, without the advice. */
import { resolve } from 'node:path'
import type { FileAccess, FileContents } from '../../src/plan/disk/file-access.js'
import type { Plan } from '../../src/plan/plan.js'
import { readPlan } from '../../src/plan/read-plan.js'
import { formatProblem, type Outcome } from '../../src/problems.js'
import { vocabulary } from './vocabulary.js'

/** Files by path relative to the working folder; a value of `null` is a folder. */
export function filesInMemory(files: Readonly<Record<string, string | Uint8Array | null>>): FileAccess {
  const byPath = new Map(Object.entries(files).map(([path, contents]) => [resolve(path), contents]))
  const found = (path: string, most: number): FileContents => {
    const contents = byPath.get(resolve(path))
    if (contents === undefined) return { kind: 'missing' }
    if (contents === null) return { kind: 'folder' }
    const bytes = typeof contents === 'string' ? new TextEncoder().encode(contents) : contents
    return bytes.length > most ? { kind: 'too large', sizeBytes: bytes.length } : { kind: 'bytes', bytes }
  }
  return {
    read: found,
    beginning: (path, count) => {
      const contents = found(path, Number.POSITIVE_INFINITY)
      return contents.kind === 'bytes'
        ? { kind: 'bytes', bytes: contents.bytes.subarray(0, count) }
        : contents
    },
  }
}

export function read(text: string, files: FileAccess = filesInMemory({})): Outcome<Plan> {
  return readPlan({ file: 'week.yaml', text, vocabulary, files })
}

/** The plan, which must be free of problems. */
export function planOf(text: string, files?: FileAccess): Plan {
  const outcome = read(text, files)
  if (!outcome.ok) throw new Error(outcome.problems.map(formatProblem).join('\n'))
  return outcome.value
}

/** `week.yaml:3:5: error: …`, a line a problem, in the order in which they are told. */
export function problemsOf(text: string, files?: FileAccess): readonly string[] {
  return toldBy(read(text, files))
}

export function toldBy(outcome: Outcome<unknown>): readonly string[] {
  return outcome.problems.map(problem => formatProblem(problem).split('\n')[0]!)
}

/** What the plan is told to do, a sentence or two a problem. */
export function adviceFor(text: string, files?: FileAccess): readonly string[] {
  return read(text, files).problems.map(({ advice }) => advice)
}

/** A plan with these words and one thing to print. */
export function weekOf(words: readonly string[], more = ''): string {
  return `words:\n${words.map(word => `  - ${word}\n`).join('')}print:\n  - word-cards\n${more}`
}

/**
 * What is told of a text in which `▸` stands before what is wrong (the sign is taken out first): the messages, each
 * behind a `▸` where it is told of that very place, else behind its own.
 */
export function toldAtMark(marked: string, files?: FileAccess): readonly string[] {
  const before = marked.slice(0, marked.indexOf('▸')).split('\n')
  const place = `week.yaml:${before.length}:${before.at(-1)!.length + 1}: error: `
  return problemsOf(marked.replace('▸', ''), files).map(problem => problem.replace(place, '▸ '))
}
