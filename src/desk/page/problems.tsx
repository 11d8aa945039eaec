/** What is wrong or worth a look, in the plan's own words, each leading to where it is changed. */
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
