/** What is printed: from pictures of her own words, with its options as controls; and for whom. */
import { useEffect, useRef, useState } from 'preact/hooks'
import type { Data, DeskKey, LayoutPicture } from '../messages.js'
import {
  entriesOf,
  isKeys,
  keyIn,
  listOf,
  pastedWords,
  textChange,
  textOf,
  valueAt,
  wordEntry,
} from '../plan-values.js'
import { fetchLayoutPicture } from './connection.js'
import { idOf, useDesk } from './desk-state.js'
import { ChoiceField, Fold, NumberField, TextField } from './fields.js'

export function Things() {
  const { plan } = useDesk()
  const items = listOf(plan.data, 'print')
  return (
    <section aria-labelledby="things-head">
      <h2 id="things-head">Things to make</h2>
      <Whole />
      <h3>What is printed</h3>
      {items.length === 0 && <p>Nothing by itself yet. Choose below.</p>}
      <ol class="items">
        {items.map((entry, index) => (
          <ItemRow
            key={index}
            entry={entry}
            index={index}
            count={items.length}
            before={items.slice(0, index).filter(each => layoutOf(each) === layoutOf(entry)).length}
          />
        ))}
      </ol>
      <Choose count={items.length} />
      <Groups />
    </section>
  )
}

/** What holds for everything. */
function Whole() {
  const { plan, names, change } = useDesk()
  const data = plan.data ?? undefined
  const set = (key: string, says: string) => (value: string) =>
    change(says, textChange(data, [keyIn(data, key)], value))
  const week = valueAt(data, 'week')
  const isWeek =
    week !== undefined && week !== '' && !(typeof week === 'string' && /^(?:no|false|off)$/i.test(week))
  return (
    <div class="fields whole">
      <ChoiceField
        label="Paper"
        value={textOf(data, 'paper')}
        none="letter"
        choices={names.papers.map(({ name }) => name).filter(name => !name.startsWith('screen'))}
        id="at-paper"
        commit={set('paper', 'the paper')}
      />
      <ChoiceField
        label="Typeface"
        value={textOf(data, 'font')}
        none="andika"
        choices={names.fonts.map(({ name }) => name)}
        id="at-font"
        commit={set('font', 'the typeface')}
      />
      <NumberField
        label="Children in the class"
        value={textOf(data, 'children')}
        least={1}
        most={500}
        id="at-children"
        commit={set('children', 'the number of children')}
      />
      <NumberField
        label="Deal of boards and orders"
        value={textOf(data, 'seed')}
        least={0}
        most={999999}
        id="at-seed"
        note="Another number deals them anew."
        commit={set('seed', 'the deal')}
      />
      <label class="tick">
        <input
          type="checkbox"
          id="at-week"
          checked={isWeek}
          onChange={event =>
            void change(
              'the whole week',
              textChange(
                data,
                [keyIn(data, 'week')],
                event.currentTarget.checked ? 'yes' : week === undefined ? '' : 'no',
              ),
            )
          }
        />
        <span>Make the week’s whole set too</span>
      </label>
    </div>
  )
}

function layoutOf(entry: Data): string {
  const layout = typeof entry === 'string' ? entry : textOf(entry, 'layout')
  return layout
    .trim()
    .toLowerCase()
    .replaceAll(/[\s_]+/g, '-')
}

interface ItemRowProps {
  readonly entry: Data
  readonly index: number
  readonly count: number
  /** How many of its layout stand before it. */
  readonly before: number
}

function ItemRow({ entry, index, count, before }: ItemRowProps) {
  const { names, sheets, change } = useDesk()
  const folded = layoutOf(entry)
  const title = textOf(entry, 'name') || folded.replaceAll('-', ' ')
  const own = names.layoutKeys[folded] ?? []
  const made = sheets.items.filter(item => item.layout === folded && item.group === null)[before]
  const first = made?.sheets.find(({ kind }) => kind === 'pieces') ?? made?.sheets[0]
  const move = (to: number) =>
    change(`the place of ${title}`, [{ kind: 'move', path: ['print'], from: index, to }])
  const usual = ['copies', 'across', 'down', 'size', 'back', 'border', 'marks']
  const often = names.itemKeys.filter(({ name }) => usual.includes(name))
  const seldom = names.itemKeys.filter(({ name }) => !usual.includes(name) && name !== 'layout')
  return (
    <li class="item-row">
      {first === undefined ? (
        <span class="thing" />
      ) : (
        <img class="thing" src={first.address} alt="" loading="lazy" />
      )}
      <div class="item-body">
        <div class="mark-head">
          <h4 id={idOf(['print', index])} tabIndex={-1}>
            {title}
          </h4>
          <div class="row-tools">
            <button
              type="button"
              disabled={index === 0}
              onClick={() => void move(index - 1)}
              aria-label={`Move ${title} up`}
            >
              ↑
            </button>
            <button
              type="button"
              disabled={index === count - 1}
              onClick={() => void move(index + 1)}
              aria-label={`Move ${title} down`}
            >
              ↓
            </button>
            <button
              type="button"
              onClick={() => void change(`${title} taken out`, [{ kind: 'remove', path: ['print', index] }])}
            >
              Take out<span class="only-heard"> {title}</span>
            </button>
          </div>
        </div>
        {made !== undefined && <p>{made.sheets.length === 1 ? '1 sheet' : `${made.sheets.length} sheets`}</p>}
        <Fold
          summary={
            <>
              Change it<span class="only-heard"> {title}</span>
            </>
          }
        >
          <div class="fields">
            {own.map(key => (
              <Option key={key.name} option={key} entry={entry} index={index} title={title} />
            ))}
          </div>
          <div class="fields">
            {often.map(key => (
              <Option key={key.name} option={key} entry={entry} index={index} title={title} />
            ))}
          </div>
          <Fold
            summary={
              <>
                Everything else<span class="only-heard"> of {title}</span>
              </>
            }
          >
            <div class="fields">
              {seldom.map(key => (
                <Option key={key.name} option={key} entry={entry} index={index} title={title} />
              ))}
            </div>
          </Fold>
        </Fold>
      </div>
    </li>
  )
}

interface OptionProps {
  readonly option: DeskKey
  readonly entry: Data
  readonly index: number
  readonly title: string
}

/** A control for what the key takes; a value that is a list or has keys of its own is left to the file. */
function Option({ option, entry, index, title }: OptionProps) {
  const { names, change } = useDesk()
  const { name, does, usual = 'as usual' } = option
  const value = valueAt(entry, name)
  const key = keyIn(entry, name)
  const id = idOf(['print', index, name])
  const commit = (written: string) =>
    change(`${name} of ${title}`, textChange(entry, ['print', index, key], written, 'layout'))
  if (name === 'size')
    return (
      <SizeField
        id={id}
        value={value}
        commit={commit}
        change={set =>
          change(`size of ${title}`, [
            { kind: 'set', path: ['print', index, key], value: set, textAs: 'layout' },
          ])
        }
      />
    )
  if (value !== undefined && typeof value !== 'string') return <WrittenInFile label={name} value={value} />
  const text = value ?? ''
  const note = does
  if (name === 'paper' || name === 'font')
    return (
      <ChoiceField
        label={name}
        value={text}
        none={usual}
        choices={(name === 'paper' ? names.papers : names.fonts).map(each => each.name)}
        id={id}
        note={note}
        commit={commit}
      />
    )
  switch (option.takes) {
    case 'number':
      return (
        <NumberField
          label={name}
          value={text}
          least={option.least}
          most={option.most}
          id={id}
          note={`${note} (${usual} where empty)`}
          commit={commit}
        />
      )
    case 'choice':
      return (
        <ChoiceField
          label={name}
          value={text}
          none={usual}
          choices={option.choices}
          id={id}
          note={note}
          commit={commit}
        />
      )
    case 'yes or no':
      return (
        <ChoiceField
          label={name}
          value={text}
          none={usual}
          choices={['yes', 'no']}
          id={id}
          note={note}
          commit={commit}
        />
      )
    case 'text':
      return (
        <TextField
          label={name}
          value={text}
          placeholder={usual}
          id={id}
          note={`${note}: ${option.what}`}
          commit={commit}
        />
      )
  }
}

function WrittenInFile({ label, value }: { readonly label: string; readonly value: Data }) {
  return (
    <p class="field">
      <span>{label}</span>{' '}
      {entriesOf(value).every(each => typeof each === 'string')
        ? entriesOf(value).join(', ')
        : 'written in the file'}
      <small>It is changed in the file.</small>
    </p>
  )
}

interface SizeFieldProps {
  readonly id: string
  readonly value: Data | undefined
  readonly commit: (written: string) => unknown
  readonly change: (value: Data) => unknown
}

/** Large print by its size, or from what a child can read, with the caution beside it. */
function SizeField({ id, value, commit, change }: SizeFieldProps) {
  const text = typeof value === 'string' ? value : ''
  const acuity = isKeys(value) ? valueAt(value, 'for') : undefined
  const kind =
    acuity !== undefined
      ? 'acuity'
      : /^\d/.test(text)
        ? 'points'
        : text === 'large'
          ? 'large'
          : text === '' || text === 'normal'
            ? 'normal'
            : 'other'
  const [chosen, setChosen] = useState(kind)
  const distance = textOf(acuity, 'distance') || '25 cm'
  const reads = textOf(acuity, 'acuity') || '20/200'
  const pick = (next: string) => {
    setChosen(next)
    if (next === 'normal') commit('')
    if (next === 'large') commit('large')
    if (next === 'points') commit('24 pt')
    if (next === 'acuity') change({ for: { acuity: reads, distance } })
  }
  return (
    <fieldset class="size">
      <legend id={id} tabIndex={-1}>
        Size of the words
      </legend>
      {[
        ['normal', 'as usual: the longest word decides'],
        ['large', 'large print'],
        ['points', 'at least so many points'],
        ['acuity', 'from what a child can read'],
      ].map(([name = '', says]) => (
        <label key={name} class="tick">
          <input type="radio" name={`${id}-kind`} checked={chosen === name} onChange={() => pick(name)} />
          <span>{says}</span>
        </label>
      ))}
      {chosen === 'other' && <p>{text}</p>}
      {chosen === 'points' && (
        <NumberField
          label="Points"
          value={/^\d+/.exec(text)?.[0] ?? ''}
          least={6}
          most={200}
          commit={points => commit(points === '' ? '' : `${points} pt`)}
        />
      )}
      {chosen === 'acuity' && (
        <div class="fields">
          <TextField
            label="The child reads, such as 20/200"
            value={reads}
            commit={next => change({ for: { acuity: next, distance } })}
          />
          <TextField
            label="At a distance of, such as 25 cm"
            value={distance}
            commit={next => change({ for: { acuity: reads, distance: next } })}
          />
        </div>
      )}
      {chosen !== 'normal' && (
        <p class="caution">
          A starting point: the child’s own vision specialist decides what size and contrast serve.
        </p>
      )}
    </fieldset>
  )
}

/** Every layout as a small picture of her own words. */
function Choose({ count }: { readonly count: number }) {
  const { names, change } = useDesk()
  const [isOpen, setOpen] = useState(false)
  return (
    <details class="fold choose" onToggle={event => setOpen(event.currentTarget.open)}>
      <summary>Add something</summary>
      {isOpen && (
        <ul class="layouts">
          {names.layouts.map(({ name, summary }) => (
            <li key={name}>
              <Picture layout={name} />
              <b>{name.replaceAll('-', ' ')}</b>
              <small>{summary}</small>
              <button
                type="button"
                onClick={() =>
                  void change(name.replaceAll('-', ' '), [
                    { kind: 'insert', path: ['print'], at: count, values: [{ layout: name }] },
                  ])
                }
              >
                Add<span class="only-heard"> {name.replaceAll('-', ' ')}</span>
              </button>
            </li>
          ))}
        </ul>
      )}
    </details>
  )
}

/** Asked for when it comes into view; the last one stays until the next has come. */
function Picture({ layout }: { readonly layout: string }) {
  const { plan } = useDesk()
  const [found, setFound] = useState<LayoutPicture>({})
  const [isSeen, setSeen] = useState(false)
  const place = useRef<HTMLSpanElement>(null)
  useEffect(() => {
    const observer = new IntersectionObserver(entries => {
      if (entries.some(({ isIntersecting }) => isIntersecting)) setSeen(true)
    })
    if (place.current !== null) observer.observe(place.current)
    return () => observer.disconnect()
  }, [])
  useEffect(() => {
    let isWanted = isSeen
    if (!isSeen) return
    void fetchLayoutPicture(layout).then(told => isWanted && setFound(told))
    return () => {
      isWanted = false
    }
  }, [layout, plan.version, isSeen])
  if (found.picture !== undefined) return <img class="thing" src={found.picture} alt="" />
  return (
    <span ref={place} class="thing none">
      {found.why}
    </span>
  )
}

/** Other children in the same week. */
function Groups() {
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
  const setWords = (typed: string) => {
    const values = pastedWords(typed).map(wordEntry)
    const isThere = words !== undefined
    if (values.length === 0)
      return isThere && change(`the words of ${name}`, [{ kind: 'remove', path: key('words') }])
    // A list with dashes is changed by what goes and what comes, so that the notes in it stay.
    const old = entriesOf(words)
    if (!Array.isArray(words))
      return change(`the words of ${name}`, [{ kind: 'set', path: key('words'), value: values }])
    const gone = old.flatMap((each, at) => (values.includes(each) ? [] : [at])).toReversed()
    const come = values.filter(each => !old.includes(each))
    return change(`the words of ${name}`, [
      ...(come.length === 0
        ? []
        : [{ kind: 'insert' as const, path: key('words'), at: old.length, values: come }]),
      ...gone.map(at => ({ kind: 'remove' as const, path: [...key('words'), at] })),
    ])
  }
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
    </li>
  )
}
