/** What is known of her printer. */
import type { Change } from '../messages.js'
import { isKeys, keyIn, textChange, textOf, valueAt } from '../plan-values.js'
import { type BackShift, readShift, writtenShift } from '../printer-shift.js'
import { useDesk } from './desk-state.js'
import { ChoiceField, NumberField, TextField } from './fields.js'

export function Printer() {
  const { plan, change } = useDesk()
  const data = plan.data ?? undefined
  const key = keyIn(data, 'printer')
  const printer = valueAt(data, 'printer')
  const { shift, text, isCutOff } = readShift(printer)
  const passes = textOf(printer, 'passes')
  const pile = textOf(printer, 'pile')
  const set = (name: string, value: string, says: string) => {
    const next = Object.fromEntries(
      Object.entries({
        'back shift': shift === undefined ? text : writtenShift(shift),
        passes,
        pile,
        [name]: value,
      }).filter(
        ([own, each]) => each !== '' && (own !== 'pile' || isTwo(name === 'passes' ? value : passes)),
      ),
    )
    if (Object.keys(next).length === 0)
      return change(says, printer === undefined ? [] : [{ kind: 'remove', path: [key] }])
    if (!isKeys(printer) || isCutOff) return change(says, [{ kind: 'set', path: [key], value: next }])
    const gone: readonly Change[] =
      name === 'passes' && !isTwo(value) && pile !== ''
        ? [{ kind: 'remove', path: [key, keyIn(printer, 'pile')] }]
        : []
    return change(says, [...gone, ...textChange(printer, [key, keyIn(printer, name)], value)])
  }
  const move = (next: BackShift) => set('back shift', writtenShift(next), 'how far backs are moved')
  return (
    <section aria-labelledby="printer-head">
      <h3 id="printer-head" tabIndex={-1}>
        Your printer
      </h3>
      <p class="lead">
        Only for cards with something on their backs. Print the thing called “calibration” on both sides once,
        and read off it how far the backs miss their fronts.
      </p>
      {shift === undefined ? (
        <div class="fields">
          <TextField
            label="How far backs are moved"
            value={text}
            id="at-printer-back_shift"
            commit={next => set('back shift', next, 'how far backs are moved')}
          />
        </div>
      ) : (
        <Shift shift={shift} move={move} />
      )}
      <div class="fields">
        <ChoiceField
          label="Backs are printed"
          value={passes}
          none="as usual: in one go, the printer turns the card"
          choices={[
            { value: 'one', label: 'in one go' },
            { value: 'two', label: 'in a second go: I put the pile back in' },
          ]}
          id="at-printer-passes"
          commit={next => set('passes', next, 'how backs are printed')}
        />
        {isTwo(passes) && (
          <ChoiceField
            label="Of the pile, the printer takes first"
            value={pile}
            none="as usual: the first sheet"
            choices={[
              { value: 'in order', label: 'the first sheet' },
              { value: 'last sheet first', label: 'the last sheet' },
            ]}
            id="at-printer-pile"
            commit={next => set('pile', next, 'how the pile is taken')}
          />
        )}
      </div>
    </section>
  )
}

interface ShiftProps {
  readonly shift: BackShift
  readonly move: (next: BackShift) => unknown
}

function Shift({ shift, move }: ShiftProps) {
  return (
    <div class="fields">
      <NumberField
        label="Backs are moved sideways, mm"
        value={String(Math.abs(shift.rightMm) || '')}
        least={0}
        most={20}
        step={0.1}
        id="at-printer-back_shift"
        commit={next => move({ ...shift, rightMm: Math.sign(shift.rightMm || 1) * Number(next) })}
      />
      <ChoiceField
        label="To the"
        value={shift.rightMm < 0 ? 'left' : ''}
        none="right"
        choices={['left']}
        commit={next => move({ ...shift, rightMm: Math.abs(shift.rightMm) * (next === 'left' ? -1 : 1) })}
      />
      <NumberField
        label="And up or down, mm"
        value={String(Math.abs(shift.downMm) || '')}
        least={0}
        most={20}
        step={0.1}
        commit={next => move({ ...shift, downMm: Math.sign(shift.downMm || 1) * Number(next) })}
      />
      <ChoiceField
        label="Which of the two"
        value={shift.downMm < 0 ? 'up' : ''}
        none="down"
        choices={['up']}
        commit={next => move({ ...shift, downMm: Math.abs(shift.downMm) * (next === 'up' ? -1 : 1) })}
      />
    </div>
  )
}

function isTwo(passes: string): boolean {
  return passes.toLowerCase() === 'two'
}
