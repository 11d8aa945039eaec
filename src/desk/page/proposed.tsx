/** Lists for groups that show one pattern, from short words to long: looked at, and taken over or left. */
import { useState } from 'preact/hooks'
import type { Change, ProposedLists } from '../messages.js'
import { titled } from '../plain-words.js'
import { keyIn, listOf, textOf, valueAt } from '../plan-values.js'
import { fetchProposed } from './connection.js'
import { useDesk } from './desk-state.js'
import { ChoiceField, NumberField } from './fields.js'

export function Proposed() {
  const { plan, names, change, say } = useDesk()
  const data = plan.data ?? undefined
  const asked = valueAt(data, 'spread')
  const [pattern, setPattern] = useState(typeof asked === 'string' ? asked : textOf(asked, 'pattern'))
  const [lists, setLists] = useState(textOf(asked, 'lists') || '3')
  const [words, setWords] = useState(textOf(asked, 'words') || '8')
  const [found, setFound] = useState<ProposedLists>()
  const groups = listOf(plan.data, 'groups')
  const find = async () => {
    const told = await fetchProposed(pattern, lists, words)
    setFound(told)
    say(
      told.lists.length === 0 ? (told.why ?? 'No words are found.') : `${told.lists.length} lists are found.`,
    )
  }
  const take = async () => {
    const taken = groups.map(group => textOf(group, 'name').toLowerCase())
    const values = (found?.lists ?? []).map(list => ({
      name: freeName(list.name, taken),
      words: list.words,
    }))
    const changes: readonly Change[] = [{ kind: 'insert', path: ['groups'], at: groups.length, values }]
    document.getElementById('proposed-head')?.focus()
    if (await change(`${values.length} new groups`, changes)) setFound(undefined)
  }
  return (
    <section aria-labelledby="proposed-head">
      <h3 id="proposed-head" tabIndex={-1}>
        Lists for groups by one pattern
      </h3>
      <p class="lead">
        Familiar words that show a pattern, in lists from short words to long. Look at them; nothing is made
        of them unless you take them over.
      </p>
      <div class="fields">
        <ChoiceField
          label="The pattern"
          value={pattern}
          none="choose"
          choices={names.patterns.map(each => ({ value: each.name, label: titled(each) }))}
          id="at-spread"
          commit={setPattern}
        />
        <NumberField label="How many lists" value={lists} least={2} most={6} commit={setLists} />
        <NumberField label="Words in each" value={words} least={3} most={40} commit={setWords} />
        <button type="button" disabled={pattern === ''} onClick={() => void find()}>
          Show the lists
        </button>
      </div>
      {found?.why !== undefined && <p class="unsure">{found.why}</p>}
      {found !== undefined && found.lists.length > 0 && (
        <>
          <ul class="notes">
            {found.lists.map(({ name, words: own }) => (
              <li key={name}>{own.join(', ')}</li>
            ))}
          </ul>
          <p>
            <button type="button" class="main" onClick={() => void take()}>
              Make {found.lists.length} groups of them
            </button>{' '}
            <small>You can give each its own name and change its words afterwards.</small>
          </p>
        </>
      )}
      {asked !== undefined && (
        <p>
          The plan’s file asks for such lists each time it is made on the command line.{' '}
          <button
            type="button"
            onClick={() => {
              document.getElementById('proposed-head')?.focus()
              void change('asking for lists each time', [{ kind: 'remove', path: [keyIn(data, 'spread')] }])
            }}
          >
            Ask no more
          </button>
        </p>
      )}
    </section>
  )
}

/** No two groups have one name. */
function freeName(name: string, taken: readonly string[]): string {
  const number = Number(/\d+$/.exec(name)?.[0] ?? 1)
  const stem = name.replace(/\s*\d+$/, '')
  const free = [name, ...Array.from({ length: 99 }, (_, index) => `${stem} ${number + index + 1}`)]
  return free.find(each => !taken.includes(each.toLowerCase())) ?? name
}
