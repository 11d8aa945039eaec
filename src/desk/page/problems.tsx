/** What is wrong or worth a look, in the plan's own words, each leading to where it is changed. */
import type { Path } from '../messages.js'
import { folded } from '../plan-values.js'
import { useDesk } from './desk-state.js'

export function Problems({ errorsAlone = false }: { readonly errorsAlone?: boolean }) {
  const { plan, sheets, lead } = useDesk()
  const shown = sheets.problems.filter(({ severity }) => !errorsAlone || severity === 'error')
  if (shown.length === 0) return null
  return (
    <ul class="problems">
      {shown.map(({ severity, message, advice, path, line }, index) => (
        <li key={index} class={severity}>
          <b>{severity === 'error' ? 'To mend' : 'To look at'}</b> {message} {advice}
          {path === undefined
            ? line !== undefined && ` It stands in line ${line} of the file.`
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
