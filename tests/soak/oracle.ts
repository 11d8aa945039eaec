/** What must be true of whatever was given: success, or problems with a place and advice. */
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { filesOfSet } from '../../src/files/folder/previous-set.js'
import { parseManifest } from '../../src/files/folder/read-manifest.js'
import { hasErrors, type Outcome, type Problem } from '../../src/problems.js'
import type { Folder } from './models/plan-texts.js'

const mostSeconds = 10

/** What is wrong with the outcome, a line each. */
export function faultsOf(outcome: Outcome<unknown>, folder: Folder): readonly string[] {
  const { ok, problems } = outcome
  return [
    ...(ok === hasErrors(problems)
      ? [`it is ${ok ? 'a success with errors' : 'a failure without one'}`]
      : []),
    ...problems.flatMap(problem => faultsOfProblem(problem, folder)),
  ]
}

/** What a program says that was not finished. */
const unfinished = /\bundefined\b|\bNaN\b|\[object /

function faultsOfProblem({ place, message, advice }: Problem, folder: Folder): readonly string[] {
  const told = JSON.stringify({ place, message, advice })
  const fault = (what: string) => `${what}: ${told}`
  const text = Object.entries(folder).find(([name]) => place.file.endsWith(name))?.[1]
  return [
    ...(place.file === '' ? [fault('no file')] : []),
    ...(message.trim() === '' || unfinished.test(message) ? [fault('no message')] : []),
    ...(advice.trim() === '' || unfinished.test(advice) ? [fault('no advice')] : []),
    ...(typeof text === 'string' && !standsIn(place, text) ? [fault('no such place')] : []),
  ]
}

/** Whether there is such a line, and such a column in it; in a text that is read otherwise than as UTF-8 a sign may be three. */
function standsIn({ line = 1, column = 1 }: Problem['place'], text: string): boolean {
  // Half of a sign is written as one that is none.
  if (/\uFFFD|\p{Surrogate}/u.test(text)) return true
  const lines = text.replace(/^\uFEFF/, '').split(/\r\n?|\n/)
  const found = lines[line - 1]
  return found !== undefined && column >= 1 && column <= Math.max(1, found.length)
}

/** What is wrong with a set that was written, or with a folder in which nothing should be. */
export function faultsOfSet(outFolder: string, stem: string, made: boolean): readonly string[] {
  const names = existsSync(outFolder) ? readdirSync(outFolder) : []
  if (!made) return names.length === 0 ? [] : [`left behind: ${names.join(', ')}`]
  const folder = join(outFolder, stem)
  const manifest = parseManifest(readFileSync(join(folder, 'manifest.json'), 'utf8'))
  if (manifest === undefined) return ['a manifest that is not as we write it']
  const listed = new Set(filesOfSet(manifest))
  const found = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter(entry => entry.isFile())
    .map(entry =>
      join(entry.parentPath, entry.name)
        .slice(folder.length + 1)
        .replaceAll('\\', '/'),
    )
  return [
    ...(names.length === 1 ? [] : [`beside the set: ${names.join(', ')}`]),
    ...[...listed].filter(file => !found.includes(file)).map(file => `missing: ${file}`),
    ...found.filter(file => !listed.has(file)).map(file => `not in the manifest: ${file}`),
  ]
}

/** The task with what it took: an exception is a fault, and so are more than ten seconds. */
export async function watched(
  task: () => readonly string[] | Promise<readonly string[]>,
): Promise<readonly string[]> {
  const before = process.cpuUsage()
  try {
    const faults = await task()
    const { user, system } = process.cpuUsage(before)
    const seconds = (user + system) / 1e6
    return [...faults, ...(seconds > mostSeconds ? [`it took ${seconds.toFixed(1)} s of the processor`] : [])]
  } catch (error) {
    return [`an exception: ${error instanceof Error ? error.stack : String(error)}`]
  }
}
