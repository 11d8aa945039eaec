/** Files that the plan names and the desk does not open: what is said of them, in place of that they cannot be read. */
import { basename } from 'node:path'
import type { PathFinder, Problem } from '../../oaktag.js'
import type { DeskProblem } from '../messages.js'
import { tellProblem } from './plan-view.js'

export interface Refusing {
  readonly problems: readonly Problem[]
  /** Paths that were asked for and lie outside the plan’s folder. */
  readonly refused: ReadonlySet<string>
  /** Of the plan. */
  readonly path: string
  readonly find: PathFinder
  /** Lists of words beside the plan. */
  readonly lists: ReadonlyMap<string, string>
}

export function tellProblems({ problems, refused, path, find, lists }: Refusing): readonly DeskProblem[] {
  const about = (name: string) =>
    problems.find(({ message }) => message.endsWith('cannot be read') && message.includes(basename(name)))
  const outside = [...refused].map((name): DeskProblem => {
    const problem = about(name)
    const own = problem && tellProblem(problem, path, find)
    return {
      ...(own ?? { severity: 'warning' as const }),
      message: `${basename(name)} lies outside the folder of ${basename(path)}, and the desk opens nothing there.`,
      advice: `Put a copy of it into that folder, and choose it anew; or close the desk and print with the command oaktag make, which opens it where it lies.`,
    }
  })
  const told = new Set([...refused].map(about))
  return [
    ...problems.filter(problem => !told.has(problem)).map(problem => tellProblem(problem, path, find, lists)),
    ...outside,
  ]
}
