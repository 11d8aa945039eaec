/** A word of a list: typed over, moved, taken out, looked at closely. */
import { useState } from 'preact/hooks'
import type { Change, Data, ToldEntry } from '../messages.js'
import { pastedWords, wordEntry } from '../pasted-words.js'
import { broughtIn, entriesOf, isKeys, isListFile, keyIn, textOf } from '../plan-values.js'
import { fetchList } from './connection.js'
import { idOf, useDesk } from './desk-state.js'
import { useList } from './listed.js'
import { ProblemsOf } from './problems.js'
import { RowTools } from './row-tools.js'
import { WordAlone } from './word-alone.js'
import { WordCloser } from './word-closer.js'
import { WordField } from './word-field.js'

interface WordRowProps {
  readonly entry: Data
  readonly index: number
  readonly told: ToldEntry
  /** Whose word it is, where it is not the class's. */
  readonly whose: string
}

export function WordRow({ entry, index, told, whose }: WordRowProps) {
  const { path: list, root, file, holds, entries, idAt, newWordId, change } = useList()
  const text = typeof entry === 'string' ? entry : textOf(entry, 'word')
  const path = isKeys(entry) ? [...list, index, keyIn(entry, 'word')] : [...list, index]
  const [gesture] = useState(() => `word ${Math.random()}`)
  const isFile = file === undefined && isListFile(entry)
  const inner = Array.isArray(entry) ? entriesOf(entry) : undefined
  const commit = (typed: string) => {
    const more = pastedWords(typed)
    if (more.length > 1) {
      const [first, ...rest] = more
      const changes: Change[] = [
        { kind: 'set', path, value: first?.word ?? text },
        { kind: 'insert', path: list, at: index + 1, values: rest.map(wordEntry) },
      ]
      return change('the pasted words', changes)
    }
    return change(`the word ${typed}`, [{ kind: 'set', path, value: typed }], `${gesture} ${index}`)
  }
  const label = `${isFile ? 'List of words' : 'Word'} ${index + 1}${whose === '' ? '' : ` of ${whose}`}`
  if (inner !== undefined)
    return (
      <li class="word-row">
        <p id={idAt(index)} tabIndex={-1}>
          {inner.map(each => (typeof each === 'string' ? each : textOf(each, 'word'))).join(', ')}
          <small>A list within the list. It is changed in the file.</small>
        </p>
        <RowTools
          list={list}
          index={index}
          count={entries.length}
          title="the list within the list"
          after={newWordId}
        />
      </li>
    )
  return (
    <li class="word-row">
      <WordField
        label={label}
        value={text}
        id={idAt(index)}
        next={index + 1 < entries.length ? idAt(index + 1) : newWordId}
        told={told}
        commit={commit}
      >
        {isFile && <NamedFile name={text} index={index} />}
      </WordField>
      <RowTools
        list={list}
        {...(file === undefined ? {} : { file })}
        index={index}
        count={entries.length}
        title={text}
        after={newWordId}
      />
      {told !== null && 'text' in told && <ProblemsOf path={[...root, index]} />}
      {told !== null &&
        'text' in told &&
        !isFile &&
        (holds === 'word' ? (
          <WordAlone index={index} word={told} />
        ) : (
          <WordCloser entry={entry} index={index} word={told} />
        ))}
    </li>
  )
}

/** An entry that is the name of a list in a file. */
function NamedFile({ name, index }: { readonly name: string; readonly index: number }) {
  const { plan, say } = useDesk()
  const { path, entries, newWordId, change } = useList()
  const found = plan.files.find(each => each.name === name)
  const bringIn = async () => {
    const listed = await fetchList(name)
    if (listed === undefined) return say(`${name} cannot be read. Nothing was changed.`)
    document.getElementById(newWordId)?.focus()
    return change(`the words of ${name}`, broughtIn(entries, index, listed, path))
  }
  return (
    <div>
      <p>
        A list in a file of its own.
        {found !== undefined && found.why === undefined && (
          <>
            {' '}
            Its {found.entries.length === 1 ? 'word stands' : `${found.entries.length} words stand`}{' '}
            <button
              type="button"
              class="link"
              onClick={() => document.getElementById(idOf(['file', name]))?.focus()}
            >
              below
            </button>
            , and what you change there is written into it.
          </>
        )}
      </p>
      {found?.why !== undefined && <p class="wrong">{found.why}</p>}
      <button type="button" onClick={() => void bringIn()}>
        Bring the words into the plan<span class="only-heard"> from {name}</span>
      </button>
      <small>The file stays as it is, and the plan no longer looks at it.</small>
    </div>
  )
}
