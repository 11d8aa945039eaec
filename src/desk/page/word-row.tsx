/** A word of the list: typed over, moved, taken out, looked at closely. */
import { useState } from 'preact/hooks'
import type { Change, Data, DeskWord, NoWordHere } from '../messages.js'
import { pastedWords, wordEntry } from '../pasted-words.js'
import { broughtIn, isKeys, isListFile, keyIn, listOf, textOf } from '../plan-values.js'
import { fetchList } from './connection.js'
import { idOf, useDesk } from './desk-state.js'
import { RowTools } from './row-tools.js'
import { WordCloser } from './word-closer.js'
import { WordField } from './word-field.js'

interface WordRowProps {
  readonly entry: Data
  readonly index: number
  readonly count: number
  readonly told: DeskWord | NoWordHere | null
}

export function WordRow({ entry, index, count, told }: WordRowProps) {
  const { plan, change, say } = useDesk()
  const text = typeof entry === 'string' ? entry : textOf(entry, 'word')
  const path = isKeys(entry) ? ['words', index, keyIn(entry, 'word')] : ['words', index]
  const [gesture] = useState(() => `word ${Math.random()}`)
  const isFile = isListFile(entry)
  const bringIn = async () => {
    const listed = await fetchList(text)
    if (listed === undefined) return say(`${text} cannot be read. Nothing was changed.`)
    document.getElementById('new-word')?.focus()
    return change(`the words of ${text}`, broughtIn(listOf(plan.data, 'words'), index, listed))
  }
  const commit = (typed: string) => {
    const more = pastedWords(typed)
    if (more.length > 1) {
      const [first, ...rest] = more
      const changes: Change[] = [
        { kind: 'set', path, value: first?.word ?? text },
        { kind: 'insert', path: ['words'], at: index + 1, values: rest.map(wordEntry) },
      ]
      return change('the pasted words', changes)
    }
    return change(`the word ${typed}`, [{ kind: 'set', path, value: typed }], `${gesture} ${index}`)
  }
  return (
    <li class="word-row">
      <WordField
        label={isFile ? `List of words ${index + 1}` : `Word ${index + 1}`}
        value={text}
        id={idOf(['words', index])}
        told={told}
        commit={commit}
      >
        {isFile && (
          <div>
            <p>A list in a file of its own. Its words stand below and are changed in that file, not here.</p>
            <button type="button" onClick={() => void bringIn()}>
              Bring the words into the plan<span class="only-heard"> from {text}</span>
            </button>
            <small>The file stays as it is.</small>
          </div>
        )}
      </WordField>
      <RowTools list="words" index={index} count={count} title={text} after="new-word" />
      {told !== null && 'text' in told && !isFile && <WordCloser entry={entry} index={index} word={told} />}
    </li>
  )
}
