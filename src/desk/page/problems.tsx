/** What is wrong or worth a look, in the plan's own words, each leading to where it is changed. */
import type { DeskProblem, Path } from '../messages.js'
import { folded } from '../plan-values.js'
import { useDesk } from './desk-state.js'

export function Problems({ errorsAlone = false }: { readonly errorsAlone?: boolean }) {
  const { plan, sheets, lead } = useDesk()
  const shown = onceEach(sheets.problems.filter(({ severity }) => !errorsAlone || severity === 'error'))
  if (shown.length === 0) return null
  return (
    <ul class="problems">
      {shown.map(({ severity, message, advice, path, lines }, index) => (
        <li key={index} class={severity}>
          <b>{severity === 'error' ? 'To mend' : 'To look at'}</b> {message} {advice}
          {path === undefined
            ? lines.length > 0 &&
              ` It stands in ${lines.length === 1 ? 'line' : 'lines'} ${lines.join(', ')} of the file.`
            : plan.data !== null && (
                <button type="button" onClick={() => lead(path)}>
                  Show me where
                  <span class="only-heard"> it is changed: {message}</span>
                </button>
              )}
        </li>
      ))}
    </ul>
  )
}

/** The same slip in many lines is told once. */
function onceEach(
  problems: readonly DeskProblem[],
): readonly (DeskProblem & { readonly lines: readonly number[] })[] {
  const same = (one: DeskProblem, other: DeskProblem) =>
    one.path === undefined &&
    other.path === undefined &&
    one.message === other.message &&
    one.advice === other.advice
  return problems.flatMap((problem, index) => {
    if (problems.findIndex(other => other === problem || same(other, problem)) < index) return []
    const all = problems.filter(other => other === problem || same(other, problem))
    return [{ ...problem, lines: all.flatMap(({ line }) => line ?? []) }]
  })
}

/** What is wrong or worth a look with a thing, a group or a mark, where it stands. */
export function ProblemsOf({ path }: { readonly path: Path }) {
  const { sheets } = useDesk()
  const own = sheets.problems.filter(problem =>
    path.every((step, at) => folded(String(problem.path?.[at])) === folded(String(step))),
  )
  if (own.length === 0) return null
  return (
    <ul class="problems">
      {own.map(({ severity, message, advice }, index) => (
        <li key={index} class={severity}>
          <b>{severity === 'error' ? 'To mend' : 'To look at'}</b> {message} {advice}
        </li>
      ))}
    </ul>
  )
}
