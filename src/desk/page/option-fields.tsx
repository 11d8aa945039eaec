/** Controls for what only things to print take: choices with pictures, grids, lengths, sorts, some of a list. */
import { useEffect, useId, useState } from 'preact/hooks'
import type { Data } from '../messages.js'
import { entriesOf, folded } from '../plan-values.js'
import { fetchSorts } from './connection.js'
import { useDesk } from './desk-state.js'
import { asChoices, type Choice, ChoiceField, Fold, NumberField, TextField } from './fields.js'
import { Picture } from './layout-picture.js'
import { usePicked } from './use-picked.js'

interface Shared {
  readonly label: string
  readonly value: string
  readonly id: string
  readonly note: string
  readonly commit: (value: string) => unknown
}

interface PicturedChoiceProps extends Omit<Shared, 'note'> {
  readonly note?: string
  /** The key that its pictures are made with. */
  readonly name: string
  readonly none: string
  readonly choices: readonly (string | Choice)[]
  readonly item: { readonly [key: string]: Data }
  readonly of: 'front' | 'back'
}

/** A choice, and on demand each of it as a picture of the first card or board. */
export function PicturedChoice({
  name,
  label,
  value,
  none,
  choices,
  id,
  note,
  commit,
  item,
  of,
}: PicturedChoiceProps) {
  const [shown, pick] = usePicked(value, commit)
  const group = useId()
  return (
    <div class="pictured-choice">
      <ChoiceField
        label={label}
        value={shown}
        none={none}
        choices={choices}
        id={id}
        {...(note === undefined ? {} : { note })}
        commit={pick}
      />
      <Fold
        summary={
          <>
            See each<span class="only-heard"> {label}</span>
          </>
        }
      >
        <fieldset class="pictured" aria-label={label}>
          {asChoices(choices).map(each => (
            <label key={each.value} class="style">
              <input
                type="radio"
                name={group}
                checked={folded(shown) === folded(each.value)}
                onChange={() => pick(each.value)}
              />
              <Picture item={{ ...without(item, name), [name]: each.value }} of={of} />
              <span>{each.label}</span>
            </label>
          ))}
        </fieldset>
      </Fold>
    </div>
  )
}

/** What a picture is of comes last. */
function without(item: { readonly [key: string]: Data }, name: string): { readonly [key: string]: Data } {
  return Object.fromEntries(Object.entries(item).filter(([key]) => folded(key) !== folded(name)))
}

/** Sorts are named by the words: what these support is asked for. */
export function SortField({
  label,
  value,
  none,
  id,
  note,
  commit,
}: Omit<Shared, 'note'> & { readonly none: string; readonly note?: string }) {
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
      {...(note === undefined ? {} : { note })}
      commit={commit}
    />
  )
}

interface PairProps extends Omit<Shared, 'note'> {
  readonly note?: string
  readonly labels: readonly [string, string]
  readonly least: number
  readonly most: number
  readonly step?: number
  readonly written: (one: string, other: string) => string
}

/** Two numbers that are one value: nothing is written until both are there, or neither. */
function PairField({ label, labels, value, id, note, least, most, step, written, commit }: PairProps) {
  const [one = '', other = ''] = pairIn(value)
  const [typed, setTyped] = useState<readonly [string, string]>([one, other])
  useEffect(() => setTyped([one, other]), [one, other])
  const take = (next: readonly [string, string]) => {
    setTyped(next)
    if (next[0] === '' && next[1] === '') commit('')
    else if (next[0] !== '' && next[1] !== '') commit(written(...next))
  }
  const range = { least, most, ...(step === undefined ? {} : { step }) }
  return (
    <fieldset class="grid-field">
      <legend id={id} tabIndex={-1}>
        {label}
      </legend>
      <NumberField label={labels[0]} value={typed[0]} {...range} commit={next => take([next, typed[1]])} />
      <NumberField label={labels[1]} value={typed[1]} {...range} commit={next => take([typed[0], next])} />
      {note !== undefined && <small>{note}</small>}
    </fieldset>
  )
}

function pairIn(value: string): readonly string[] {
  return /^([\d.]+)\s*(?:mm)?\s*(?:[x×*]|by)\s*([\d.]+)\s*(?:mm)?$/i.exec(value)?.slice(1) ?? []
}

export function GridField(shared: Shared & { readonly least: number; readonly most: number }) {
  return (
    <PairField {...shared} labels={['columns', 'rows']} written={(columns, rows) => `${columns}x${rows}`} />
  )
}

/** In millimetres; another unit stays as it is written. */
export function CardField(shared: Omit<Shared, 'note'>) {
  if (shared.value !== '' && pairIn(shared.value).length === 0) return <TextField {...shared} />
  return (
    <PairField
      {...shared}
      labels={['wide, mm', 'high, mm']}
      least={10}
      most={600}
      step={0.1}
      written={(width, height) => `${width} x ${height} mm`}
    />
  )
}

/** In millimetres; another unit stays as it is written. */
export function LengthField({ label, value, id, note, commit }: Shared) {
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
  readonly does: string
  readonly usual: string
  readonly all: readonly string[]
  readonly value: Data | undefined
  readonly id: string
  readonly write: (chosen: readonly string[]) => unknown
}

/** Some of the words, or of the groups. */
export function Ticks({ does, usual, all, value, id, write }: TicksProps) {
  const written = entriesOf(value).flatMap(each => (typeof each === 'string' ? [each.toLowerCase()] : []))
  const chosen = (each: string) => value === undefined || written.includes(each.toLowerCase())
  if (all.length === 0) return null
  return (
    <fieldset class="ticks">
      <legend id={id} tabIndex={-1}>
        {does}
      </legend>
      <small>All ticked: {usual}.</small>
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
