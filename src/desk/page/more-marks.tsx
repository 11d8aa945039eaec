/** What else may be marked: patterns that the words show, exact letters, whole words. */
import { useState } from 'preact/hooks'
import type { Change, Data } from '../messages.js'
import { studiedWords, textOf } from '../plan-values.js'
import { useDesk } from './desk-state.js'
import { ChoiceField, TextField } from './fields.js'

/** Patterns that the words show, with how many of them do. */
export function Shown({ marks }: { readonly marks: readonly Data[] }) {
  const { plan, change } = useDesk()
  const marked = marks.map(each => textOf(each, 'pattern').toLowerCase())
  const mark = (pattern: string) => {
    const changes: readonly Change[] = [
      { kind: 'insert', path: ['marks'], at: marks.length, values: [{ pattern }] },
    ]
    return change(`a mark on ${pattern}`, changes)
  }
  return (
    <section aria-labelledby="shown-head">
      <h3 id="shown-head" tabIndex={-1}>
        What your words show
      </h3>
      <ul class="shown">
        {plan.patterns.map(({ name, definition, words }) => (
          <li key={name}>
            <span>
              <b>{name}</b> in {words.length === 1 ? '1 word' : `${words.length} words`}
              <small>{definition}</small>
              <small class="which">
                {words.slice(0, 12).join(', ')}
                {words.length > 12 ? ', …' : ''}
              </small>
            </span>
            {marked.includes(name) ? (
              <span class="yours">marked</span>
            ) : (
              <button type="button" onClick={() => void mark(name)}>
                Mark it<span class="only-heard"> {name}</span>
              </button>
            )}
          </li>
        ))}
      </ul>
    </section>
  )
}

export function ByLetters({ count }: { readonly count: number }) {
  const { change } = useDesk()
  return (
    <section class="by-letters" aria-labelledby="letters-head">
      <h3 id="letters-head">Or exact letters</h3>
      <TextField
        label="Letters, such as ea, or a_e for letters with another between"
        value=""
        commit={letters =>
          letters !== '' &&
          change(`a mark on ${letters}`, [
            { kind: 'insert', path: ['marks'], at: count, values: [{ letters }] },
          ])
        }
      />
    </section>
  )
}

const features = ['part of speech', 'sounds', 'syllables', 'plural'] as const

/** Every word of which something is so: that it is a noun, has two syllables. */
export function ByWord({ count }: { readonly count: number }) {
  const { plan, change } = useDesk()
  const [feature, setFeature] = useState('')
  const words = studiedWords(plan).map(({ word }) => word)
  const found: Readonly<Record<string, readonly string[]>> = {
    'part of speech': words.flatMap(word => word.partsOfSpeech),
    sounds: words.map(word => String(word.soundCount)),
    syllables: words.map(word => String(word.syllables.length)),
    plural: words.flatMap(word => (word.plural === null ? [] : [word.plural.rule])),
  }
  const values = [...new Set(found[feature])].toSorted()
  return (
    <section aria-labelledby="whole-words-head">
      <h3 id="whole-words-head">Or whole words</h3>
      <div class="fields">
        <ChoiceField
          label="Words by their"
          value={feature}
          none="choose"
          choices={features}
          commit={setFeature}
        />
        {values.length > 0 && (
          <ChoiceField
            label={`Which ${feature}`}
            value=""
            none="choose"
            choices={values}
            commit={value =>
              value !== '' &&
              change(`a mark on ${feature}: ${value}`, [
                { kind: 'insert', path: ['marks'], at: count, values: [{ [feature]: value }] },
              ])
            }
          />
        )}
      </div>
    </section>
  )
}
