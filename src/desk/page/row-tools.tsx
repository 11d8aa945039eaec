/** What moves an entry of a list, and takes it out. */
import { useEffect } from 'preact/hooks'
import type { Change, Path } from '../messages.js'
import { idOf, useDesk } from './desk-state.js'

/** The state of the plan at the last press. */
let pressedAt: string | undefined

export interface RowToolsProps {
  /** Where the list stands. */
  readonly list: Path
  /** Of a list in a file of its own, as the plan names it. */
  readonly file?: string
  readonly index: number
  readonly count: number
  readonly title: string
  /** Where the keyboard goes on when the last entry has gone. */
  readonly after: string
}

export function RowTools({ list, file, index, count, title, after }: RowToolsProps) {
  const { plan, change: send } = useDesk()
  const root = file === undefined ? list : ['file', file]
  const id = (at: number, what: string) => `${idOf([...root, at])}-${what}`
  const focus = (...ids: readonly string[]) => {
    for (const each of ids) {
      const found = document.getElementById(each)
      if (found === null || (found instanceof HTMLButtonElement && found.disabled)) continue
      found.focus()
      return
    }
  }
  useEffect(() => {
    pressedAt = undefined
  }, [plan.version])
  /** Until the page shows what became of the last press, another one would be meant for another entry. */
  const isWaiting = () => pressedAt === plan.version
  const press = async (says: string, change: Change) => {
    pressedAt = plan.version
    const own = file === undefined ? change : { ...change, file }
    if (!(await send(says, [own]))) pressedAt = undefined
  }
  const move = (to: number, what: 'up' | 'down') => {
    if (isWaiting()) return
    // The keyboard goes with what is moved.
    focus(id(to, what), id(to, what === 'up' ? 'down' : 'up'))
    void press(`the place of ${title}`, { kind: 'move', path: list, from: index, to })
  }
  const takeOut = () => {
    if (isWaiting()) return
    if (index === count - 1) focus(id(index - 1, 'out'), after)
    void press(`${title} taken out`, { kind: 'remove', path: [...list, index] })
  }
  return (
    <div class="row-tools">
      <button
        type="button"
        id={id(index, 'up')}
        disabled={index === 0}
        onClick={() => move(index - 1, 'up')}
        aria-label={`Move ${title} up`}
      >
        ↑
      </button>
      <button
        type="button"
        id={id(index, 'down')}
        disabled={index === count - 1}
        onClick={() => move(index + 1, 'down')}
        aria-label={`Move ${title} down`}
      >
        ↓
      </button>
      <button type="button" id={id(index, 'out')} onClick={takeOut}>
        Take out<span class="only-heard"> {title}</span>
      </button>
    </div>
  )
}
