/** Other children in the same week. */
import { useState } from 'preact/hooks'
import type { Data } from '../messages.js'
import { pastedWords, wordEntry } from '../pasted-words.js'
import { entriesOf, keyIn, listChange, listOf, textChange, textOf, valueAt } from '../plan-values.js'
import { idOf, useDesk } from './desk-state.js'
import { TextField } from './fields.js'
import { LeftInFile } from './left-in-file.js'
import { SizeField } from './size-field.js'

export function Groups() {
  const { plan, change } = useDesk()
  const groups = listOf(plan.data, 'groups')
  const [name, setName] = useState('')
  const add = async () => {
    const value = { name: name.trim() }
    if (
      await change(`the group ${value.name}`, [
        { kind: 'insert', path: ['groups'], at: groups.length, values: [value] },
      ])
    )
      setName('')
  }
  return (
    <section class="groups" aria-labelledby="groups-head">
      <h3 id="groups-head">Groups beside the class</h3>
      <p class="lead">
        Children with other words or larger print in the same week. A group without words takes those of the
        class.
      </p>
      <ul>
        {groups.map((group, index) => (
          <GroupRow key={index} group={group} index={index} count={groups.length} />
        ))}
      </ul>
      <div class="fields">
        <label class="field">
          <span>A new group</span>
          <input
            value={name}
            autocomplete="off"
            onInput={event => setName(event.currentTarget.value)}
            onKeyDown={event => {
              if (event.key === 'Enter' && name.trim() !== '') void add()
            }}
          />
        </label>
        <button type="button" disabled={name.trim() === ''} onClick={() => void add()}>
          Add the group
        </button>
      </div>
    </section>
  )
}

function GroupRow({
  group,
  index,
  count,
}: {
  readonly group: Data
  readonly index: number
  readonly count: number
}) {
  const { change } = useDesk()
  const name = textOf(group, 'name')
  const words = valueAt(group, 'words')
  const plain = entriesOf(words).every(each => typeof each === 'string')
  const key = (own: string) => ['groups', index, keyIn(group, own)]
  const setWords = (typed: string) =>
    change(`the words of ${name}`, listChange(group, key('words'), pastedWords(typed).map(wordEntry)))
  return (
    <li class="group-row">
      <TextField
        label="Name"
        value={name}
        id={idOf(['groups', index])}
        commit={value => change(`the name of ${name}`, textChange(group, key('name'), value))}
      />
      {plain ? (
        <TextField
          label="Words"
          value={entriesOf(words).join(' ')}
          placeholder="those of the class"
          id={idOf(['groups', index, 'words'])}
          commit={setWords}
        />
      ) : (
        <p>Its words have notes of their own; they are changed in the file.</p>
      )}
      <SizeField
        id={idOf(['groups', index, 'size'])}
        value={valueAt(group, 'size')}
        commit={value => change(`the size of ${name}`, textChange(group, key('size'), value))}
        change={value => change(`the size of ${name}`, [{ kind: 'set', path: key('size'), value }])}
      />
      <button
        type="button"
        onClick={() =>
          void change(`the group ${name} taken out`, [
            { kind: 'remove', path: count === 1 ? ['groups'] : ['groups', index] },
          ])
        }
      >
        Take out<span class="only-heard"> {name}</span>
      </button>
      <LeftInFile data={group} shown={['name', 'words', 'size']} path={['groups', index]} />
    </li>
  )
}
