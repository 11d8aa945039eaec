/** Letters of a word, picked by pointing, and what is said of them. */
import { useState } from 'preact/hooks'
import { withFinding } from '../findings.js'
import type { Data, DeskWord } from '../messages.js'
import { listOf } from '../plan-values.js'
import { useDesk } from './desk-state.js'
import { ChoiceField } from './fields.js'

export interface PickProps {
  readonly entry: Data
  readonly index: number
  readonly word: DeskWord
}

export function Pick({ entry, index, word }: PickProps) {
  const { plan, names, change } = useDesk()
  const [range, setRange] = useState<readonly [number, number]>()
  const [pattern, setPattern] = useState('')
  const letters = [...word.text]
  const [from, to] = range ?? [0, -1]
  const picked = letters
    .slice(from, to + 1)
    .join('')
    .toLowerCase()
  const place =
    range === undefined || word.text.length === picked.length
      ? undefined
      : from === 0
        ? 'beginning'
        : to === letters.length - 1
          ? 'end'
          : 'middle'
  const marks = listOf(plan.data, 'marks')
  const mark = (at?: string) =>
    change(`a mark on ${picked}`, [
      {
        kind: 'insert',
        path: ['marks'],
        at: marks.length,
        values: [at === undefined ? { letters: picked } : { letters: picked, place: at }],
      },
    ])
  const pick = (at: number) => {
    if (range === undefined || at < range[0]) setRange([at, at])
    else if (at === range[0] && at === range[1]) setRange(undefined)
    else setRange([range[0], at])
  }
  return (
    <fieldset class="pick" aria-label={`Pick letters of ${word.text}`}>
      <h3>Pick letters</h3>
      <div class="letters">
        {letters.map((letter, at) => (
          <button
            key={at}
            type="button"
            class="letter"
            aria-pressed={at >= from && at <= to}
            onClick={() => pick(at)}
          >
            {letter}
          </button>
        ))}
      </div>
      {range === undefined ? (
        <small>Press the first letter, then the last.</small>
      ) : (
        <div class="choices">
          <button type="button" onClick={() => void mark()}>
            Mark {picked} wherever it stands
          </button>
          {place !== undefined && (
            <button type="button" onClick={() => void mark(place)}>
              Mark {picked} only {place === 'middle' ? 'in' : 'at'} the {place} of words
            </button>
          )}
          <ChoiceField
            label={`In ${word.text}, ${picked} shows`}
            value={pattern}
            none="choose a pattern"
            choices={names.patterns.map(({ name }) => name)}
            commit={setPattern}
          />
          <button
            type="button"
            disabled={pattern === ''}
            onClick={() =>
              void change(
                `${pattern} in ${word.text}`,
                withFinding(entry, index, 'also', `${pattern} ${picked}`),
              )
            }
          >
            It does in my class
          </button>
        </div>
      )}
    </fieldset>
  )
}
