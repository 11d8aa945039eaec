import { keyIn, textChange, valueAt } from '../plan-values.js'
import { idOf, useDesk } from './desk-state.js'
import { ChoiceField, Fold } from './fields.js'

/** What holds for all words: how the class speaks and counts. */
export function ClassWays() {
  const { plan, change } = useDesk()
  const data = plan.data ?? undefined
  const choices = [
    { key: 'accent', label: 'How your class speaks', none: 'american', values: ['american', 'r-less'] },
    {
      key: 'count sounds',
      label: 'How sounds are counted',
      none: 'as taught',
      values: ['as taught', 'every phoneme'],
    },
    { key: 'clues', label: 'Where you gave no clue', none: 'own: there is none', values: ['own', 'drafts'] },
  ]
  return (
    <Fold summary="How your class speaks and counts">
      <div class="fields">
        {choices.map(({ key, label, none, values }) => {
          const value = valueAt(data, key)
          return value !== undefined && typeof value !== 'string' ? (
            <p key={key}>{label}: written in the file, and changed there.</p>
          ) : (
            <ChoiceField
              key={key}
              label={label}
              value={value ?? ''}
              none={none}
              choices={values}
              id={idOf([key])}
              commit={chosen => change(label.toLowerCase(), textChange(data, [keyIn(data, key)], chosen))}
            />
          )
        })}
      </div>
    </Fold>
  )
}
