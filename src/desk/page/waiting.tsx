/** What to do first, where there is nothing to put on sheets yet. */
import { useDesk } from './desk-state.js'

export function Waiting() {
  const { sheets } = useDesk()
  switch (sheets.waits) {
    case 'words':
      return (
        <p>
          There are no words yet. Type the first one under <a href="#words">Words</a>, and its sheets appear
          here.
        </p>
      )
    case 'things':
      return (
        <p>
          Nothing is printed yet. Choose something under <a href="#things">Things to make</a>.
        </p>
      )
    case undefined:
      return null
  }
}
