/** The options of a thing to print, each as the control that suits what it takes. */
import { useEffect, useId, useState } from 'preact/hooks'
import type { Data, DeskKey } from '../messages.js'
import { entriesOf, isKeys, keyIn, listChange, listOf, textChange, textOf, valueAt } from '../plan-values.js'
import { fetchSorts } from './connection.js'
import { idOf, useDesk } from './desk-state.js'
import { ChoiceField, Fold, NumberField, TextField } from './fields.js'
import { Picture } from './layout-picture.js'
import { SizeField } from './size-field.js'

export interface OptionProps {
  readonly option: DeskKey
  readonly entry: Data
  readonly index: number
  readonly title: string
  readonly layout: string
}

/** What is easily chosen of the colours; others are written. */
const contrasts = ['white on black', 'black on yellow', 'yellow on black', 'black on ivory']

export function Option({ option, entry, index, title, layout }: OptionProps) {
  const { plan, names, change } = useDesk()
  const { name, does, usual = 'as usual' } = option
  const value = valueAt(entry, name)
  const path = ['print', index, keyIn(entry, name)]
  const id = idOf(['print', index, name])
  const says = `${name} of ${title}`
  const commit = (written: string) => change(says, textChange(entry, path, written, 'layout'))
  const set = (data: Data) => change(says, [{ kind: 'set', path, value: data, textAs: 'layout' }])
  if (name === 'size') return <SizeField id={id} value={value} commit={commit} change={set} />
  if (name === 'words' || name === 'groups') {
    const all =
      name === 'words'
        ? plan.words.flatMap(word => (word === null ? [] : [word.text]))
        : listOf(plan.data, 'groups').map(group => textOf(group, 'name'))
    return (
      <Ticks
        name={name}
        does={does}
        usual={usual}
        all={all}
        value={value}
        id={id}
        write={chosen =>
          change(says, listChange(entry, path, chosen.length === all.length ? [] : chosen, 'layout'))
        }
      />
    )
  }
  if (value !== undefined && typeof value !== 'string') return <WrittenInFile label={name} value={value} />
  const text = value ?? ''
  const shared = { label: name, value: text, id, commit }
  const pictured = (choices: readonly string[]) => (
    <PicturedChoice
      {...shared}
      none={usual}
      choices={choices}
      note={does}
      item={{ ...forPicture(entry), layout }}
      of={name === 'back' ? 'back' : 'front'}
    />
  )
  if (name === 'paper' || name === 'font') {
    const known = (name === 'paper' ? names.papers : names.fonts).map(each => each.name)
    return name === 'font' ? (
      pictured(known)
    ) : (
      <ChoiceField {...shared} none={usual} choices={known} note={does} />
    )
  }
  if (name === 'contrast') return pictured(contrasts)
  if (name === 'sort') return <SortField {...shared} none={usual} note={does} />
  switch (option.takes) {
    case 'number':
      return (
        <NumberField
          {...shared}
          least={option.least}
          most={option.most}
          note={`${does} (${usual} where empty)`}
        />
      )
    case 'choice':
      return pictured(option.choices)
    case 'yes or no':
      return <ChoiceField {...shared} none={usual} choices={['yes', 'no']} note={does} />
    case 'grid':
      return (
        <GridField
          {...shared}
          least={option.least}
          most={option.most}
          note={`${does} (${usual} where empty)`}
        />
      )
    case 'length':
      return <LengthField {...shared} note={`${does} (${usual} where empty)`} />
    case 'text':
      return <TextField {...shared} placeholder={usual} note={`${does}: ${option.what}`} />
  }
}

/** What of an item its picture needs: for whom and how often does not matter there. */
function forPicture(entry: Data): { readonly [key: string]: Data } {
  const left = ['groups', 'copies', 'name', 'layout']
  const pairs = isKeys(entry) ? Object.entries(entry) : []
  return Object.fromEntries(pairs.filter(([key]) => !left.includes(key.toLowerCase())))
}

function WrittenInFile({ label, value }: { readonly label: string; readonly value: Data }) {
  const entries = entriesOf(value)
  return (
    <p class="field">
      <span>{label}</span>{' '}
      {entries.every(each => typeof each === 'string') ? entries.join(', ') : 'written in the file'}
      <small>It is changed in the file.</small>
    </p>
  )
}

interface Shared {
  readonly label: string
  readonly value: string
  readonly id: string
  readonly note: string
  readonly commit: (value: string) => unknown
}

interface PicturedChoiceProps extends Shared {
  readonly none: string
  readonly choices: readonly string[]
  readonly item: { readonly [key: string]: Data }
  readonly of: 'front' | 'back'
}

/** A choice, and on demand each of it as a picture of the first card or board. */
function PicturedChoice({ label, value, none, choices, id, note, commit, item, of }: PicturedChoiceProps) {
  const group = useId()
  return (
    <div class="pictured-choice">
      <ChoiceField
        label={label}
        value={value}
        none={none}
        choices={choices}
        id={id}
        note={note}
        commit={commit}
      />
      <Fold
        summary={
          <>
            See each<span class="only-heard"> {label}</span>
          </>
        }
      >
        <fieldset class="pictured" aria-label={label}>
          {choices.map(each => (
            <label key={each} class="style">
              <input
                type="radio"
                name={group}
                checked={value.toLowerCase() === each.toLowerCase()}
                onChange={() => commit(each)}
              />
              <Picture item={{ ...item, [label]: each }} of={of} />
              <span>{each}</span>
            </label>
          ))}
        </fieldset>
      </Fold>
    </div>
  )
}

/** Sorts are named by the words: what these support is asked for. */
function SortField({ label, value, none, id, note, commit }: Shared & { readonly none: string }) {
  const { plan } = useDesk()
  const [sorts, setSorts] = useState<readonly string[]>([])
  useEffect(() => {
    void fetchSorts().then(setSorts)
  }, [plan.version])
  return (
    <ChoiceField
      label={label}
      value={value}
      none={none}
      choices={sorts}
      id={id}
      note={note}
      commit={commit}
    />
  )
}

function GridField({
  label,
  value,
  id,
  note,
  least,
  most,
  commit,
}: Shared & { readonly least: number; readonly most: number }) {
  const [columns = '', rows = ''] = /^(\d+)\s*(?:[x×*]|by)\s*(\d+)$/i.exec(value)?.slice(1) ?? []
  const [typed, setTyped] = useState<readonly [string, string]>([columns, rows])
  useEffect(() => setTyped([columns, rows]), [columns, rows])
  const take = (next: readonly [string, string]) => {
    setTyped(next)
    if (next[0] === '' && next[1] === '') commit('')
    else if (next[0] !== '' && next[1] !== '') commit(`${next[0]}x${next[1]}`)
  }
  return (
    <fieldset class="grid-field">
      <legend id={id} tabIndex={-1}>
        {label}
      </legend>
      <NumberField
        label="columns"
        value={typed[0]}
        least={least}
        most={most}
        commit={next => take([next, typed[1]])}
      />
      <NumberField
        label="rows"
        value={typed[1]}
        least={least}
        most={most}
        commit={next => take([typed[0], next])}
      />
      <small>{note}</small>
    </fieldset>
  )
}

/** In millimetres; another unit stays as it is written. */
function LengthField({ label, value, id, note, commit }: Shared) {
  const number = /^(\d+)\s*(?:mm)?$/i.exec(value)?.[1]
  if (value !== '' && number === undefined)
    return <TextField label={label} value={value} id={id} note={note} commit={commit} />
  return (
    <NumberField
      label={`${label}, mm`}
      value={number ?? ''}
      least={0}
      most={100}
      id={id}
      note={note}
      commit={next => commit(next === '' ? '' : `${next} mm`)}
    />
  )
}

interface TicksProps {
  readonly name: string
  readonly does: string
  readonly usual: string
  readonly all: readonly string[]
  readonly value: Data | undefined
  readonly id: string
  readonly write: (chosen: readonly string[]) => unknown
}

/** Some of the words, or of the groups. */
function Ticks({ name, does, usual, all, value, id, write }: TicksProps) {
  const written = entriesOf(value).flatMap(each => (typeof each === 'string' ? [each.toLowerCase()] : []))
  const chosen = (each: string) => value === undefined || written.includes(each.toLowerCase())
  if (all.length === 0) return null
  return (
    <fieldset class="ticks">
      <legend id={id} tabIndex={-1}>
        {name}
      </legend>
      <small>
        {does} ({usual} where all are ticked)
      </small>
      {all.map(each => (
        <label key={each} class="tick">
          <input
            type="checkbox"
            checked={chosen(each)}
            onChange={event => {
              const isOn = event.currentTarget.checked
              write(all.filter(other => (other === each ? isOn : chosen(other))))
            }}
          />
          <span>{each}</span>
        </label>
      ))}
    </fieldset>
  )
}
