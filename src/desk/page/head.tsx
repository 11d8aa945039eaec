import { useEffect, useRef, useState } from 'preact/hooks'
import { keyIn, textChange, textOf } from '../plan-values.js'
import { closeDesk } from './connection.js'
import { useDesk } from './desk-state.js'
import { TextField } from './fields.js'
import type { View } from './views.js'

const titles: Readonly<Record<View, string>> = {
  words: 'Words',
  marks: 'Marks',
  things: 'Things to make',
  sheets: 'Sheets',
}

export interface HeadProps {
  readonly view: View
  readonly travel: (direction: 'undo' | 'redo', says: string) => Promise<void>
  readonly closed: () => void
}

export function Head({ view, travel, closed }: HeadProps) {
  const { plan, sheets, change } = useDesk()
  const [isAsking, setAsking] = useState(false)
  const first = useRef<HTMLButtonElement>(null)
  const asking = useRef<HTMLButtonElement>(null)
  const wasAsking = useRef(false)
  useEffect(() => {
    // One button stands where the other was, and the keyboard with it.
    if (isAsking !== wasAsking.current) (isAsking ? first : asking).current?.focus()
    wasAsking.current = isAsking
  }, [isAsking])
  const errors = sheets.problems.filter(({ severity }) => severity === 'error').length
  const others = sheets.problems.length - errors
  const set = (key: string, says: string) => (value: string) =>
    change(says, textChange(plan.data ?? undefined, [keyIn(plan.data, key)], value))
  return (
    <header class="head">
      <a class="skip" href="#main">
        Skip to the work
      </a>
      <div class="names">
        <h1>
          <span class="file">{plan.file}</span>
        </h1>
        {plan.data !== null && (
          <>
            <TextField
              label="Title"
              value={textOf(plan.data, 'title')}
              id="at-title"
              commit={set('title', 'the title')}
            />
            <TextField
              label="Class"
              value={textOf(plan.data, 'class')}
              id="at-class"
              commit={set('class', 'the class')}
            />
          </>
        )}
      </div>
      <nav aria-label="Parts of the desk">
        {Object.entries(titles).map(([name, title]) => (
          <a key={name} href={`#${name}`} aria-current={name === view ? 'page' : undefined}>
            {title}
            {name === 'sheets' && sheets.problems.length > 0 && (
              <span class="count">{errors > 0 ? `${errors} to mend` : `${others} to look at`}</span>
            )}
          </a>
        ))}
      </nav>
      <div class="tools">
        <button
          type="button"
          disabled={plan.undo === null}
          onClick={() => void travel('undo', plan.undo ?? '')}
        >
          Undo<span class="what">{plan.undo === null ? '' : ` ${plan.undo}`}</span>
        </button>
        <button
          type="button"
          disabled={plan.redo === null}
          onClick={() => void travel('redo', plan.redo ?? '')}
        >
          Redo<span class="what">{plan.redo === null ? '' : ` ${plan.redo}`}</span>
        </button>
        {isAsking ? (
          <span class="asking">
            <button ref={first} type="button" class="main" onClick={() => void closeDesk().then(closed)}>
              Yes, close it
            </button>
            <button type="button" onClick={() => setAsking(false)}>
              Stay
            </button>
          </span>
        ) : (
          <button ref={asking} type="button" onClick={() => setAsking(true)}>
            Close the desk
          </button>
        )}
      </div>
    </header>
  )
}
