/** What moves an entry of a list, and takes it out. */
import { idOf, useDesk } from './desk-state.js'

export interface RowToolsProps {
  /** The key of the list. */
  readonly list: string
  readonly index: number
  readonly count: number
  readonly title: string
  /** Where the keyboard goes on when the last entry has gone. */
  readonly after: string
}

export function RowTools({ list, index, count, title, after }: RowToolsProps) {
  const { change } = useDesk()
  const id = (at: number, what: string) => `${idOf([list, at])}-${what}`
  const focus = (...ids: readonly string[]) => {
    for (const each of ids) {
      const found = document.getElementById(each)
      if (found === null || (found instanceof HTMLButtonElement && found.disabled)) continue
      found.focus()
      return
    }
  }
  // The keyboard goes with what was moved.
  const move = async (to: number, what: 'up' | 'down') => {
    if (await change(`the place of ${title}`, [{ kind: 'move', path: [list], from: index, to }]))
      focus(id(to, what), id(to, what === 'up' ? 'down' : 'up'))
  }
  const takeOut = async () => {
    if (await change(`${title} taken out`, [{ kind: 'remove', path: [list, index] }]))
      focus(index < count - 1 ? id(index, 'out') : id(index - 1, 'out'), after)
  }
  return (
    <div class="row-tools">
      <button
        type="button"
        id={id(index, 'up')}
        disabled={index === 0}
        onClick={() => void move(index - 1, 'up')}
        aria-label={`Move ${title} up`}
      >
        ↑
      </button>
      <button
        type="button"
        id={id(index, 'down')}
        disabled={index === count - 1}
        onClick={() => void move(index + 1, 'down')}
        aria-label={`Move ${title} down`}
      >
        ↓
      </button>
      <button type="button" id={id(index, 'out')} onClick={() => void takeOut()}>
        Take out<span class="only-heard"> {title}</span>
      </button>
    </div>
  )
}
