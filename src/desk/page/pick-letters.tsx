/** Letters of a word, picked by pointing, and what is said of them. */
import { useState } from 'preact/hooks'
import { withFinding } from '../findings.js'
import type { Data, DeskWord } from '../messages.js'
import { useDesk } from './desk-state.js'
import { ChoiceField } from './fields.js'
import { useList } from './listed.js'
import { useMarks } from './marked-list.js'

export interface PickProps {
  readonly entry: Data
  readonly index: number
  readonly word: DeskWord
}

export function Pick({ entry, index, word }: PickProps) {
  const { names } = useDesk()
  const { path, holds, change } = useList()
  const { add } = useMarks()
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
  const mark = (at?: string) =>
    add(at === undefined ? { letters: picked } : { letters: picked, place: at }, `a mark on ${picked}`)
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
          {holds === 'keys' && (
            <>
              <ChoiceField
                label={`In ${word.text}, ${picked} shows`}
                value={pattern}
                none="choose a pattern"
                choices={names.patterns.map(({ name, title = name }) => ({ value: name, label: title }))}
                commit={setPattern}
              />
              <button
                type="button"
                disabled={pattern === ''}
                onClick={() =>
                  void change(
                    `what ${word.text} shows`,
                    withFinding(entry, [...path, index], 'also', `${pattern} ${picked}`),
                  )
                }
              >
                It does in my class
              </button>
            </>
          )}
        </div>
      )}
    </fieldset>
  )
}
