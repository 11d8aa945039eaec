/** Lines, outlines and colours, from pictures that the engine draws. */
import type { NamedChoice } from '../messages.js'
import { usePicked } from './use-picked.js'

/** Dark enough on white to be read, and apart from one another for most eyes; any other is written. */
const colours = [
  { name: 'blue', value: '#00618a' },
  { name: 'red', value: '#a3231f' },
  { name: 'green', value: '#2b6622' },
  { name: 'purple', value: '#6b3a8c' },
  { name: 'brown', value: '#7a4a12' },
]

export interface PicturedProps {
  readonly legend: string
  readonly kind: 'line' | 'outline'
  readonly choices: readonly NamedChoice[]
  readonly value: string
  readonly id: string
  readonly pick: (value: string) => unknown
}

/** Each style under letters, as the engine draws it. */
export function Pictured({ legend, kind, choices, value, id, pick: commit }: PicturedProps) {
  const [shown, pick] = usePicked(value, commit)
  const group = `${id}-choice`
  return (
    <fieldset class="pictured">
      <legend id={id} tabIndex={-1}>
        {legend}
      </legend>
      <label class="style">
        <input type="radio" name={group} checked={shown === ''} onChange={() => pick('')} />
        <span>none chosen</span>
      </label>
      {choices.map(({ name }) => (
        <label key={name} class="style">
          <input
            type="radio"
            name={group}
            checked={shown.toLowerCase() === name}
            onChange={() => pick(name)}
          />
          <img src={`/styles/${kind}-${name}.svg`} alt="" loading="lazy" />
          <span>{name}</span>
        </label>
      ))}
    </fieldset>
  )
}

export function Colours({ value, id, pick: commit }: Pick<PicturedProps, 'value' | 'id' | 'pick'>) {
  const [shown, pick] = usePicked(value, commit)
  const group = `${id}-choice`
  const known = colours.some(each => each.value === shown.toLowerCase() || each.name === shown.toLowerCase())
  return (
    <fieldset class="pictured">
      <legend id={id} tabIndex={-1}>
        Colour
      </legend>
      <label class="style">
        <input type="radio" name={group} checked={shown === ''} onChange={() => pick('')} />
        <span>black</span>
      </label>
      {colours.map(each => (
        <label key={each.name} class="style">
          <input
            type="radio"
            name={group}
            checked={shown.toLowerCase() === each.value || shown.toLowerCase() === each.name}
            onChange={() => pick(each.value)}
          />
          <svg width="28" height="16" aria-hidden="true">
            <rect width="28" height="16" rx="3" fill={each.value} />
          </svg>
          <span>{each.name}</span>
        </label>
      ))}
      <label class="style">
        <input
          type="color"
          value={/^#[0-9a-f]{6}$/i.test(shown) ? shown : '#444444'}
          onChange={event => pick(event.currentTarget.value)}
        />
        <span>{known || shown === '' ? 'another' : `yours: ${shown}`}</span>
      </label>
      <small>
        A colour is only ever an addition: copiers and some eyes do not show it, so give it a line of its own
        too.
      </small>
    </fieldset>
  )
}
