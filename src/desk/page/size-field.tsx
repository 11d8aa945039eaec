/** How large the words are. */
import type { Data } from '../messages.js'
import { centimetres, readSize, type WordSize, writtenSize } from '../word-size.js'
import { ChoiceField, NumberField, TextField } from './fields.js'
import { usePicked } from './use-picked.js'

interface SizeFieldProps {
  readonly id: string
  readonly value: Data | undefined
  /** What holds where nothing is said. */
  readonly usual?: string
  /** Takes the key out where it is undefined. */
  readonly write: (value: Data | undefined) => unknown
}

const beginWith: Readonly<Record<string, WordSize>> = {
  normal: { kind: 'normal' },
  large: { kind: 'large' },
  points: { kind: 'points', amount: '24', exactly: false },
  'x-height': { kind: 'x-height', amount: '6', exactly: false },
  acuity: { kind: 'acuity', acuity: '20/200', distance: '25 cm', reserve: '' },
}

/** Large print by its size, or from what a child can read, with the caution beside it. */
export function SizeField({
  id,
  value,
  usual = 'as usual: the longest word decides',
  write,
}: SizeFieldProps) {
  const size = readSize(value)
  const set = (next: WordSize) => write(writtenSize(next))
  const [kind, pickKind] = usePicked<string>(size.kind, next => set(beginWith[next] ?? { kind: 'normal' }))
  const kinds = [
    ['normal', usual],
    ['large', 'large print'],
    ['points', 'so many points'],
    ['x-height', 'a small x so many millimetres high'],
    ['acuity', 'from what a child can read'],
  ]
  return (
    <fieldset class="size">
      <legend id={id} tabIndex={-1}>
        Size of the words
      </legend>
      {kinds.map(([name = '', says]) => (
        <label key={name} class="tick">
          <input type="radio" name={`${id}-kind`} checked={kind === name} onChange={() => pickKind(name)} />
          <span>{says}</span>
        </label>
      ))}
      {size.kind === 'other' && <p>In the file it is {size.text}.</p>}
      {(size.kind === 'points' || size.kind === 'x-height') && (
        <div class="fields">
          <NumberField
            label={size.kind === 'points' ? 'Points' : 'Height of a small x, mm'}
            value={size.amount}
            least={size.kind === 'points' ? 6 : 1}
            most={size.kind === 'points' ? 200 : 100}
            step={0.25}
            commit={amount => amount !== '' && set({ ...size, amount })}
          />
          <label class="tick">
            <input
              type="checkbox"
              checked={size.exactly}
              onChange={event => void set({ ...size, exactly: event.currentTarget.checked })}
            />
            <span>exactly this size, even where that of the class is larger</span>
          </label>
        </div>
      )}
      {size.kind === 'acuity' && <ForChild size={size} set={set} />}
      {size.kind !== 'normal' && (
        <p class="caution">
          A starting point: the child’s own vision specialist decides what size and contrast serve.
        </p>
      )}
    </fieldset>
  )
}

/** The same acuity in feet, in metres and as logMAR, which is log10 of the second number over the first, in steps of 0.1. */
const acuities = [
  ['20/40', '6/12', '0.3'],
  ['20/50', '6/15', '0.4'],
  ['20/63', '6/19', '0.5'],
  ['20/80', '6/24', '0.6'],
  ['20/100', '6/30', '0.7'],
  ['20/125', '6/38', '0.8'],
  ['20/160', '6/48', '0.9'],
  ['20/200', '6/60', '1.0'],
  ['20/250', '6/75', '1.1'],
  ['20/320', '6/96', '1.2'],
  ['20/400', '6/120', '1.3'],
].map(([feet = '', metres, logMar]) => ({ value: feet, label: `${feet}, ${metres}, logMAR ${logMar}` }))

interface ForChildProps {
  readonly size: Extract<WordSize, { kind: 'acuity' }>
  readonly set: (next: WordSize) => unknown
}

function ForChild({ size, set }: ForChildProps) {
  const cm = centimetres(size.distance)
  return (
    <div class="fields">
      <ChoiceField
        label="Acuity, as the specialist gave it"
        value={size.acuity}
        none="choose"
        choices={acuities}
        commit={acuity => acuity !== '' && set({ ...size, acuity })}
      />
      {cm === undefined ? (
        <TextField
          label="Read from how far away"
          value={size.distance}
          commit={distance => distance !== '' && set({ ...size, distance })}
        />
      ) : (
        <NumberField
          label="Read from so many cm"
          value={cm}
          least={2}
          most={600}
          step={0.5}
          commit={next => next !== '' && set({ ...size, distance: `${next} cm` })}
        />
      )}
      <NumberField
        label="Times larger than the smallest print read"
        value={size.reserve.replace(/\s*:\s*1$/, '')}
        least={1}
        most={10}
        step={0.5}
        note="Empty: 2."
        commit={reserve => set({ ...size, reserve })}
      />
    </div>
  )
}
