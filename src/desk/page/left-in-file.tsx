/** What the plan says and the page has no control for: shown, and left as it is. */
import type { Data, Path } from '../messages.js'
import { entriesOf, keysBeside } from '../plan-values.js'
import { idOf } from './desk-state.js'

export interface LeftInFileProps {
  readonly data: Data | null
  /** Keys that have a control. */
  readonly shown: readonly string[]
  /** Where the keys stand. */
  readonly path: Path
}

export function LeftInFile({ data, shown, path }: LeftInFileProps) {
  const left = keysBeside(data, shown)
  if (left.length === 0) return null
  return (
    <div class="left">
      <p>Also in the file; this page leaves it as it is:</p>
      <ul>
        {left.map(([key, value]) => (
          <li key={key} id={idOf([...path, key])} tabIndex={-1}>
            <b>{key}</b> {inShort(value)}
          </li>
        ))}
      </ul>
    </div>
  )
}

function inShort(value: Data): string {
  const entries = entriesOf(value)
  if (entries.every(each => typeof each === 'string')) return entries.join(', ')
  return entries.length === 1 ? 'with more below it' : `with ${entries.length} entries`
}
