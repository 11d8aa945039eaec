/** The week's whole set, and which parts of it. */
import type { Change } from '../messages.js'
import { entriesOf, isKeys, keyIn, listChange, valueAt } from '../plan-values.js'
import { useDesk } from './desk-state.js'
import { Fold } from './fields.js'

export function Week() {
  const { plan, names, change } = useDesk()
  const data = plan.data ?? undefined
  const key = keyIn(data, 'week')
  const week = valueAt(data, 'week')
  const isMade =
    week !== undefined && week !== '' && !(typeof week === 'string' && /^(?:no|false|off)$/i.test(week))
  const without = entriesOf(valueAt(week, 'without')).flatMap(each =>
    typeof each === 'string' ? [each] : [],
  )
  const say = (value: string): readonly Change[] =>
    typeof week === 'object'
      ? [
          { kind: 'remove', path: [key] },
          { kind: 'set', path: [key], value },
        ]
      : [{ kind: 'set', path: [key], value }]
  const leaveOut = (parts: readonly string[]) => {
    if (parts.length === 0) return change('the parts of the week', say('yes'))
    if (!isKeys(week))
      return change('the parts of the week', [{ kind: 'set', path: [key], value: { without: parts } }])
    return change('the parts of the week', listChange(week, [key, keyIn(week, 'without')], parts))
  }
  return (
    <div class="week">
      <label class="tick">
        <input
          type="checkbox"
          id="at-week"
          checked={isMade}
          onChange={event => void change('the whole week', say(event.currentTarget.checked ? 'yes' : 'no'))}
        />
        <span>Make the week’s whole set too</span>
      </label>
      {isMade && (
        <Fold summary="Which parts of it">
          <fieldset class="ticks" aria-label="Parts of the week">
            {names.weekParts.map(({ name, summary }) => (
              <label key={name} class="tick">
                <input
                  type="checkbox"
                  checked={!without.includes(name)}
                  onChange={event =>
                    void leaveOut(
                      event.currentTarget.checked
                        ? without.filter(each => each !== name)
                        : [...without, name],
                    )
                  }
                />
                <span>{summary}</span>
              </label>
            ))}
          </fieldset>
        </Fold>
      )}
    </div>
  )
}
