/** Controls that take a value when it is ready: at the Enter key, or when they are left. */
import type { ComponentChildren } from 'preact'
import { useEffect, useId, useRef, useState } from 'preact/hooks'
import { folded } from '../plan-values.js'
import { usePicked } from './use-picked.js'

export interface TextFieldProps {
  readonly label: string
  readonly value: string
  readonly id?: string
  readonly placeholder?: string
  readonly note?: string
  readonly commit: (value: string) => unknown
}

export function TextField({ label, value, id, placeholder, note, commit }: TextFieldProps) {
  const own = useId()
  const [typed, setTyped] = useState(value)
  /** What the plan holds, or was asked to hold last: the Enter key and leaving the field ask once. */
  const asked = useRef(value)
  useEffect(() => {
    asked.current = value
    setTyped(value)
  }, [value])
  const done = () => {
    if (typed.trim() === asked.current) return
    asked.current = typed.trim()
    commit(typed.trim())
  }
  return (
    <label class="field">
      <span>{label}</span>
      <input
        id={id ?? own}
        value={typed}
        placeholder={placeholder}
        autocomplete="off"
        onInput={event => setTyped(event.currentTarget.value)}
        onBlur={done}
        onKeyDown={event => {
          if (event.key === 'Enter') done()
          if (event.key === 'Escape') setTyped(value)
        }}
      />
      {note !== undefined && note !== '' && <small>{note}</small>}
    </label>
  )
}

export interface NumberFieldProps {
  readonly label: string
  readonly value: string
  readonly least: number
  readonly most: number
  /** A part that is still taken; whole numbers alone where left out. */
  readonly step?: number
  readonly id?: string
  readonly note?: string
  readonly commit: (value: string) => unknown
}

export function NumberField({ label, value, least, most, step, id, note, commit }: NumberFieldProps) {
  const own = useId()
  const [typed, setTyped] = useState(value)
  useEffect(() => setTyped(value), [value])
  const number = Number(typed)
  const isWhole = step !== undefined || Number.isInteger(number)
  const isFine = typed === '' || (isWhole && number >= least && number <= most)
  const done = () => {
    if (isFine && typed !== value) commit(typed)
  }
  return (
    <label class="field short">
      <span>{label}</span>
      <input
        id={id ?? own}
        type="number"
        min={least}
        max={most}
        step={step}
        value={typed}
        aria-invalid={!isFine}
        onInput={event => setTyped(event.currentTarget.value)}
        onChange={done}
      />
      {!isFine && (
        <small class="wrong">
          A {step === undefined ? 'whole number' : 'number'} from {least} to {most}.
        </small>
      )}
      {note !== undefined && note !== '' && <small>{note}</small>}
    </label>
  )
}

/** What is written, and how it is called. */
export interface Choice {
  readonly value: string
  readonly label: string
}

export function asChoices(choices: readonly (string | Choice)[]): readonly Choice[] {
  return choices.map(each => (typeof each === 'string' ? { value: each, label: each } : each))
}

export interface ChoiceFieldProps {
  readonly label: string
  readonly value: string
  /** What stands for no choice. */
  readonly none: string
  readonly choices: readonly (string | Choice)[]
  readonly id?: string
  readonly note?: string
  readonly commit: (value: string) => unknown
}

export function ChoiceField({ label, value, none, choices, id, note, commit }: ChoiceFieldProps) {
  const own = useId()
  const all = asChoices(choices)
  const [shown, pick] = usePicked(value, commit)
  const known = all.find(each => folded(each.value) === folded(shown))?.value
  return (
    <label class="field short">
      <span>{label}</span>
      <select id={id ?? own} value={known ?? shown} onChange={event => pick(event.currentTarget.value)}>
        <option value="">{none}</option>
        {all.map(each => (
          <option key={each.value} value={each.value}>
            {each.label}
          </option>
        ))}
        {shown !== '' && known === undefined && <option value={shown}>{shown}</option>}
      </select>
      {note !== undefined && note !== '' && <small>{note}</small>}
    </label>
  )
}

/** Those that she has opened: they are open when she comes back to their view. */
const opened = new Set<string>()

export function Fold({
  summary,
  children,
  id,
  keep,
}: {
  readonly summary: ComponentChildren
  readonly children: ComponentChildren
  readonly id?: string
  /** Names it among all folds of the page. */
  readonly keep?: string
}) {
  const [wasOpen] = useState(keep !== undefined && opened.has(keep))
  return (
    <details
      class="fold"
      open={wasOpen}
      onToggle={event => {
        if (keep === undefined) return
        if (event.currentTarget.open) opened.add(keep)
        else opened.delete(keep)
      }}
    >
      <summary id={id}>{summary}</summary>
      <div class="folded">{children}</div>
    </details>
  )
}
