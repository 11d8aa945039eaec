/** What holds for all words: how the class speaks and counts. */
import type { Change } from '../messages.js'
import { valueTitle } from '../plain-words.js'
import { isKeys, keyIn, replaced, textChange, textOf, valueAt } from '../plan-values.js'
import { idOf, useDesk } from './desk-state.js'
import { ChoiceField, Fold } from './fields.js'

const ways = [
  {
    key: 'count sounds',
    label: 'How sounds are counted',
    usual: 'as taught',
    values: ['as taught', 'every phoneme'],
  },
  { key: 'clues', label: 'Where you gave no clue', usual: 'own', values: ['own', 'drafts'] },
]

export function ClassWays() {
  const { plan, change } = useDesk()
  const data = plan.data ?? undefined
  return (
    <Fold summary="How your class speaks and counts">
      <Accent />
      <div class="fields">
        {ways.map(({ key, label, usual, values }) => (
          <ChoiceField
            key={key}
            label={label}
            value={textOf(data, key)}
            none={`as usual: ${valueTitle(key, usual)}`}
            choices={values.map(value => ({ value, label: valueTitle(key, value) }))}
            id={idOf([key])}
            commit={chosen => change(label.toLowerCase(), textChange(data, [keyIn(data, key)], chosen))}
          />
        ))}
      </div>
    </Fold>
  )
}

const features = [
  {
    key: 'r',
    label: 'The r of marsh',
    values: [
      { value: 'sounded', label: 'is heard' },
      { value: 'dropped', label: 'is not heard' },
    ],
  },
  {
    key: 'cot and caught',
    label: 'Cot and caught',
    values: [
      { value: 'apart', label: 'sound different' },
      { value: 'merged', label: 'sound alike' },
    ],
  },
  {
    key: 'wh',
    label: 'The wh of whale',
    values: [
      { value: 'w', label: 'sounds like w' },
      { value: 'own', label: 'has a sound of its own' },
    ],
  },
]

/** By a name, or one by one. */
function Accent() {
  const { plan, change } = useDesk()
  const data = plan.data ?? undefined
  const accent = valueAt(data, 'accent')
  const path = [keyIn(data, 'accent')]
  const isRLess = typeof accent === 'string' && accent.toLowerCase() === 'r-less'
  const set = (key: string, value: string, usual: string) => {
    const says = 'how your class speaks'
    if (isKeys(accent)) {
      const isLast = Object.keys(accent).length === 1 && valueAt(accent, key) !== undefined
      const changes: readonly Change[] =
        value === usual && isLast
          ? [{ kind: 'remove', path }]
          : textChange(accent, [...path, keyIn(accent, key)], value === usual ? '' : value)
      return change(says, changes)
    }
    if (key === 'r') return change(says, textChange(data, path, value === usual ? '' : 'r-less'))
    return change(says, replaced(data, path, { ...(isRLess ? { r: 'dropped' } : {}), [key]: value }))
  }
  return (
    <div class="fields">
      {features.map(({ key, label, values }) => {
        const [usual] = values
        const value = key === 'r' && isRLess ? 'dropped' : textOf(accent, key)
        return (
          <ChoiceField
            key={key}
            label={label}
            value={value === usual?.value ? '' : value}
            none={`as usual: ${usual?.label}`}
            choices={values.slice(1)}
            id={key === 'r' ? idOf(['accent']) : idOf(['accent', key])}
            commit={chosen => set(key, chosen === '' ? (usual?.value ?? '') : chosen, usual?.value ?? '')}
          />
        )
      })}
    </div>
  )
}
