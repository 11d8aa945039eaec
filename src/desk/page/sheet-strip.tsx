/** The first sheet of everything that is printed, small, beside the work. */
import { useDesk } from './desk-state.js'
import { Problems } from './problems.js'
import { SheetPicture } from './sheet-picture.js'
import { Waiting } from './waiting.js'

export function SheetStrip() {
  const { plan, sheets } = useDesk()
  return (
    <aside class="strip" aria-labelledby="strip-head" aria-busy={sheets.busy}>
      <h2 id="strip-head">What prints</h2>
      {sheets.older && (
        <p class="notice">The plan has something to mend, so these are the sheets from before.</p>
      )}
      {plan.data !== null && <Problems errorsAlone />}
      <ul>
        {sheets.items.map(item => {
          const pieces = item.sheets.findIndex(({ kind }) => kind === 'pieces')
          return (
            <li key={item.name} aria-busy={item.toCome}>
              <SheetPicture item={item} at={Math.max(0, pieces)} small />
              <span>
                {item.title}
                {item.group === null ? '' : `, ${item.group}`}:{' '}
                {item.sheets.length === 1 ? '1 sheet' : `${item.sheets.length} sheets`}
              </span>
            </li>
          )
        })}
      </ul>
      <Waiting />
    </aside>
  )
}
