/** How large the words are. */
import { useState } from 'preact/hooks'
import type { Data } from '../messages.js'
import { isKeys, textOf, valueAt } from '../plan-values.js'
import { NumberField, TextField } from './fields.js'

interface SizeFieldProps {
  readonly id: string
  readonly value: Data | undefined
  /** What holds where nothing is said. */
  readonly usual?: string
  readonly commit: (written: string) => unknown
  readonly change: (value: Data) => unknown
}

/** Large print by its size, or from what a child can read, with the caution beside it. */
export function SizeField({
  id,
  value,
  usual = 'as usual: the longest word decides',
  commit,
  change,
}: SizeFieldProps) {
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
        ['normal', usual],
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
