/** The whole list at once: none yet, or all of them out. */
import { exampleWords } from '../example-words.js'
import { keyIn } from '../plan-values.js'
import { useDesk } from './desk-state.js'

function toNewWord() {
  document.getElementById('new-word')?.focus()
}

export function EmptyStart() {
  const { change } = useDesk()
  const add = async () => {
    toNewWord()
    await change('the example words', [{ kind: 'insert', path: ['words'], at: 0, values: exampleWords }])
  }
  return (
    <div class="begin">
      <p>There are no words yet. Type the first one here, or paste a list below.</p>
      <button type="button" onClick={() => void add()}>
        Try it with {exampleWords.length} example words
      </button>
    </div>
  )
}

export function TakeOutAll({ count }: { readonly count: number }) {
  const { plan, change, say } = useDesk()
  const takeOut = async () => {
    toNewWord()
    if (await change('all words taken out', [{ kind: 'remove', path: [keyIn(plan.data, 'words')] }]))
      say(`All ${count} are taken out. Undo brings them back.`)
  }
  return (
    <p>
      <button type="button" onClick={() => void takeOut()}>
        Take out all words
      </button>
    </p>
  )
}
