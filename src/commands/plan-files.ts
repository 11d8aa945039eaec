/** The plans that a command is given: paths, patterns that the shell left as they are, or standard input. */
import { existsSync } from 'node:fs'
import { isAbsolute, normalize } from 'node:path'
import { type FileAccess, withFile } from '../door/plans.js'
import { errorAt, type Problem } from '../door/problems.js'
import { type Input, STANDARD_INPUT } from './standard-input.js'

export interface PlanFiles {
  readonly paths: readonly string[]
  readonly problems: readonly Problem[]
  /** Left out where all stands on the disk. */
  readonly files?: FileAccess
}

export async function planFiles(given: readonly string[], input: Input = standardInput): Promise<PlanFiles> {
  const found = await Promise.all(given.map(matching))
  const paths = eachOnce(found.flat())
  const problems = given.flatMap((pattern, index) => (found[index]!.length === 0 ? [noMatch(pattern)] : []))
  if (!paths.includes(STANDARD_INPUT)) return { paths, problems }
  return { paths, problems, files: withFile(STANDARD_INPUT, await input.text()) }
}

/** Each class file among them gives the plans of its weeks. */
export async function plansToMake(given: readonly string[], input?: Input): Promise<PlanFiles> {
  const { weekPlans } = await import('../door/plans.js')
  const named = await planFiles(given, input)
  const all = named.paths.map(path => weekPlans(path, named.files) ?? { paths: [path], problems: [] })
  return {
    ...named,
    paths: eachOnce(all.flatMap(({ paths }) => paths)),
    problems: [...named.problems, ...all.flatMap(({ problems }) => problems)],
  }
}

function eachOnce(paths: readonly string[]): readonly string[] {
  return [...new Map(paths.map(path => [normalize(path), path])).values()]
}

/** Windows' shells hand patterns on; a file of that very name wins. */
async function matching(given: string): Promise<readonly string[]> {
  // There `\` parts folders; elsewhere it may stand before a sign that is meant as it is.
  const pattern = process.platform === 'win32' ? given.replaceAll('\\', '/') : given
  if (given === STANDARD_INPUT || existsSync(given)) return [given]
  // Most plans are named as they are: what finds patterns is loaded where one is not.
  const { glob, isDynamicPattern } = await import('tinyglobby')
  if (!isDynamicPattern(pattern)) return [given]
  const found = await glob(pattern, { expandDirectories: false, absolute: isAbsolute(given) })
  return found.toSorted()
}

function noMatch(pattern: string): Problem {
  const advice = 'Look at the folder and the ending, .yaml, or name the plans one by one.'
  return errorAt({ file: pattern }, 'no file is named like this pattern', advice)
}

const standardInput: Input = {
  text: async () => {
    const parts: Buffer[] = []
    for await (const part of process.stdin) parts.push(Buffer.from(part))
    return Buffer.concat(parts).toString('utf8')
  },
}
