/** Which parts of speech a word is, the first of them first. */
import type { Data } from '../messages.js'
import { keyIn, partsChange, partsIn, textChange } from '../plan-values.js'
import { useDesk } from './desk-state.js'
import { ChoiceField } from './fields.js'
import { useList } from './listed.js'

export interface PartsFieldProps {
  readonly entry: Data
  readonly index: number
  readonly text: string
  readonly studied: readonly string[]
}

export function PartsField({ entry, index, text, studied }: PartsFieldProps) {
  const { partsOfSpeech } = useDesk().names
  const { path, holds, idAt, change } = useList()
  const write = (chosen: readonly string[]) =>
    holds === 'keys'
      ? partsChange(entry, [...path, index], chosen)
      : textChange(entry, [...path, index, keyIn(entry, 'part of speech')], chosen.join(', '), 'word')
  const parts = partsIn(entry)
  const places = [...parts, ''].slice(0, partsOfSpeech.length)
  return (
    <>
      {places.map((part, at) => (
        <ChoiceField
          key={at}
          label={at === 0 ? 'Part of speech' : `Part of speech, number ${at + 1}`}
          value={part}
          none={at > 0 ? 'none' : `as studied: ${studied.join(', ') || 'unknown'}`}
          choices={partsOfSpeech.filter(name => name === part || !parts.includes(name))}
          {...(at === 0 ? { id: idAt(index, 'part of speech') } : {})}
          commit={chosen =>
            change(
              `part of speech of ${text}`,
              write(parts.toSpliced(at, 1, ...(chosen === '' ? [] : [chosen]))),
            )
          }
        />
      ))}
    </>
  )
}
