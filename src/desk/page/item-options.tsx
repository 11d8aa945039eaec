/** The options of a thing to print, each as the control that suits what it takes. */
import type { Data, DeskKey } from '../messages.js'
import { asLabel, usualTitle, valueTitle } from '../plain-words.js'
import {
  allWords,
  entriesOf,
  isKeys,
  keyIn,
  listChange,
  listOf,
  sizeChange,
  textChange,
  textOf,
  valueAt,
} from '../plan-values.js'
import { idOf, useDesk } from './desk-state.js'
import { ChoiceField, NumberField, TextField } from './fields.js'
import { CardField, GridField, LengthField, PicturedChoice, SortField, Ticks } from './option-fields.js'
import { SizeField } from './size-field.js'

export interface OptionProps {
  readonly option: DeskKey
  readonly entry: Data
  readonly index: number
  readonly title: string
  readonly layout: string
}

/** What is easily chosen of the colours; others are written. */
const contrasts = [
  'white on black',
  'black on yellow',
  'yellow on black',
  'black on ivory',
  'black on ivory stock',
  'black on yellow stock',
]

export const contrastChoices = contrasts.map(value => ({ value, label: valueTitle('contrast', value) }))

export function Option({ option, entry, index, title, layout }: OptionProps) {
  const { plan, names, change } = useDesk()
  const { name } = option
  const does = asLabel(option.does)
  const held = option.usual === undefined ? '' : usualTitle(name, option.usual)
  // What is too long to be read in a choice stands below it.
  const isLong = held.length > 18
  const usual = held === '' || isLong ? 'as usual' : `as usual: ${held}`
  const told = isLong ? { note: `As usual: ${held}.` } : {}
  const value = valueAt(entry, name)
  const path = ['print', index, keyIn(entry, name)]
  const id = idOf(['print', index, name])
  const says = `${option.does}, in ${title}`
  const commit = (written: string) => change(says, textChange(entry, path, written, 'layout'))
  if (name === 'size')
    return (
      <SizeField
        id={id}
        value={value}
        write={size => change(says, sizeChange(entry, path, size, 'layout'))}
      />
    )
  if (name === 'words' || name === 'groups') {
    const all =
      name === 'words' ? allWords(plan) : listOf(plan.data, 'groups').map(group => textOf(group, 'name'))
    return (
      <Ticks
        does={does}
        usual={held}
        all={all}
        value={value}
        id={id}
        write={chosen =>
          change(says, listChange(entry, path, chosen.length === all.length ? [] : chosen, 'layout'))
        }
      />
    )
  }
  if (value !== undefined && typeof value !== 'string') return <WrittenInFile label={does} value={value} />
  const text = value ?? ''
  const shared = { label: does, value: text, id, commit }
  const pictured = (choices: readonly string[]) => (
    <PicturedChoice
      {...shared}
      name={name}
      none={usual}
      choices={choices.map(each => ({ value: each, label: valueTitle(name, each) }))}
      {...told}
      item={{ ...forPicture(entry), layout }}
      of={name === 'back' ? 'back' : 'front'}
    />
  )
  if (name === 'paper' || name === 'font') {
    const known = (name === 'paper' ? names.papers : names.fonts).map(each => each.name)
    return name === 'font' ? (
      pictured(known)
    ) : (
      <ChoiceField {...shared} none={usual} choices={known} {...told} />
    )
  }
  if (name === 'contrast') return pictured(contrasts)
  if (name === 'card') return <CardField {...shared} />
  if (name === 'sort') return <SortField {...shared} none={usual} {...told} />
  switch (option.takes) {
    case 'number':
      return (
        <NumberField
          {...shared}
          least={option.least}
          most={option.most}
          note={held === '' ? '' : `Empty: ${held}.`}
        />
      )
    case 'choice':
      return pictured(option.choices)
    case 'yes or no':
      return <ChoiceField {...shared} none={usual} choices={['yes', 'no']} {...told} />
    case 'grid':
      return (
        <GridField
          {...shared}
          least={option.least}
          most={option.most}
          note={held === '' ? '' : `Empty: ${held}.`}
        />
      )
    case 'length':
      return <LengthField {...shared} note={held === '' ? '' : `Empty: ${held}.`} />
    case 'text':
      return (
        <TextField
          {...shared}
          note={
            name === 'name' ? 'Empty: what the thing is called.' : `${sentence(option.what)}. Empty: ${held}.`
          }
        />
      )
  }
}

function sentence(clause: string): string {
  return `${clause.charAt(0).toUpperCase()}${clause.slice(1)}`
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
