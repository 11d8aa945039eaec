/** Other children in the same week. */
import { useState } from 'preact/hooks'
import type { Data } from '../messages.js'
import { entriesOf, valueAt } from '../plan-values.js'
import { useDesk } from './desk-state.js'
import { GroupCard } from './group-card.js'

export function Groups() {
  const { plan, change } = useDesk()
  const value = valueAt(plan.data, 'groups')
  const groups = entriesOf(value)
  const isAll = typeof value === 'string' && /^all$/i.test(value)
  const [name, setName] = useState('')
  const add = async () => {
    const entry: Data = { name: name.trim() }
    const says = `the group ${name.trim()}`
    if (await change(says, [{ kind: 'insert', path: ['groups'], at: groups.length, values: [entry] }]))
      setName('')
    document.getElementById('new-group')?.focus()
  }
  return (
    <section class="groups" aria-labelledby="groups-head">
      <h3 id="groups-head">Groups beside the class</h3>
      <p class="lead">
        Children with other words, other marks or larger print in the same week. What you do not say of a
        group is as for the class.
      </p>
      {isAll ? (
        <p>
          All groups of your class file are in this plan.{' '}
          <button
            type="button"
            onClick={() => void change('the groups', [{ kind: 'remove', path: ['groups'] }])}
          >
            Take them out
          </button>
        </p>
      ) : (
        <>
          <ul>
            {groups.map((group, index) => (
              <GroupCard key={index} group={group} index={index} count={groups.length} />
            ))}
          </ul>
          <div class="fields">
            <label class="field">
              <span>A new group</span>
              <input
                id="new-group"
                value={name}
                placeholder="its name"
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
        </>
      )}
    </section>
  )
}
