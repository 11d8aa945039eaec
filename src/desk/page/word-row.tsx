/** A word of the list: typed over, moved, taken out, looked at closely. */
import { useState } from 'preact/hooks'
import type { Change, Data, DeskWord } from '../messages.js'
import { isKeys, keyIn, pastedWords, textOf, wordEntry } from '../plan-values.js'
import { idOf, useDesk } from './desk-state.js'
import { RowTools } from './row-tools.js'
import { WordCloser } from './word-closer.js'
import { WordField } from './word-field.js'

interface WordRowProps {
  readonly entry: Data
  readonly index: number
  readonly count: number
  readonly told: DeskWord | null
}

export function WordRow({ entry, index, count, told }: WordRowProps) {
  const { change } = useDesk()
  const text = typeof entry === 'string' ? entry : textOf(entry, 'word')
  const path = isKeys(entry) ? ['words', index, keyIn(entry, 'word')] : ['words', index]
  const [gesture] = useState(() => `word ${Math.random()}`)
  const isFile = typeof entry === 'string' && /\.(?:txt|csv)$/i.test(entry)
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
        label={`Word ${index + 1}`}
        value={text}
        id={idOf(['words', index])}
        told={told}
        commit={commit}
      >
        {isFile && <p>A list in a file beside the plan: its words are changed there.</p>}
      </WordField>
      <RowTools list="words" index={index} count={count} title={text} after="new-word" />
      {told !== null && !isFile && <WordCloser entry={entry} index={index} word={told} />}
    </li>
  )
}
