/** Controls that take a value when it is ready: at the Enter key, or when they are left. */
import type { ComponentChildren } from 'preact'
import { useEffect, useId, useRef, useState } from 'preact/hooks'

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
      {note !== undefined && <small>{note}</small>}
    </label>
  )
}

export interface NumberFieldProps {
  readonly label: string
  readonly value: string
  readonly least: number
  readonly most: number
  readonly id?: string
  readonly note?: string
  readonly commit: (value: string) => unknown
}

export function NumberField({ label, value, least, most, id, note, commit }: NumberFieldProps) {
  const own = useId()
  const [typed, setTyped] = useState(value)
  useEffect(() => setTyped(value), [value])
  const number = Number(typed)
  const isFine = typed === '' || (Number.isInteger(number) && number >= least && number <= most)
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
        value={typed}
        aria-invalid={!isFine}
        onInput={event => setTyped(event.currentTarget.value)}
        onChange={done}
      />
      {!isFine && (
        <small class="wrong">
          A whole number from {least} to {most}.
        </small>
      )}
      {note !== undefined && <small>{note}</small>}
    </label>
  )
}

export interface ChoiceFieldProps {
  readonly label: string
  readonly value: string
  /** What stands for no choice. */
  readonly none: string
  readonly choices: readonly string[]
  readonly id?: string
  readonly note?: string
  readonly commit: (value: string) => unknown
}

export function ChoiceField({ label, value, none, choices, id, note, commit }: ChoiceFieldProps) {
  const own = useId()
  const known = choices.find(each => each.toLowerCase() === value.toLowerCase())
  return (
    <label class="field short">
      <span>{label}</span>
      <select id={id ?? own} value={known ?? value} onChange={event => commit(event.currentTarget.value)}>
        <option value="">{none}</option>
        {choices.map(each => (
          <option key={each} value={each}>
            {each}
          </option>
        ))}
        {value !== '' && known === undefined && <option value={value}>{value}</option>}
      </select>
      {note !== undefined && <small>{note}</small>}
    </label>
  )
}

export function Fold({
  summary,
  children,
  id,
}: {
  readonly summary: ComponentChildren
  readonly children: ComponentChildren
  readonly id?: string
}) {
  return (
    <details class="fold">
      <summary id={id}>{summary}</summary>
      <div class="folded">{children}</div>
    </details>
  )
}
