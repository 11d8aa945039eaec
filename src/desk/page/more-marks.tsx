/** What else may be marked: patterns that the words show, exact letters, whole words. */
import { useState } from 'preact/hooks'
import type { DeskWord } from '../messages.js'
import { folded, textOf } from '../plan-values.js'
import { useDesk } from './desk-state.js'
import { ChoiceField, TextField } from './fields.js'
import { markTitle } from './mark-title.js'
import { useMarks } from './marked-list.js'
import { usePatternTitle } from './pattern-title.js'

/** Patterns that the words show, with how many of them do. */
export function Shown({ words }: WordsProps) {
  const { patterns } = useDesk().names
  const { entries, add } = useMarks()
  const marked = entries.map(each => folded(textOf(each, 'pattern')))
  const found = patterns.flatMap(({ name, title = name, summary }) => {
    const showing = words.filter(word => word.patterns.some(({ pattern }) => pattern === name))
    const texts = [...new Set(showing.map(({ text }) => text))]
    return texts.length === 0 ? [] : [{ name, title, summary, texts }]
  })
  return (
    <section aria-labelledby="shown-head">
      <h3 id="shown-head" tabIndex={-1}>
        What your words show
      </h3>
      <ul class="shown">
        {found.map(({ name, title, summary, texts }) => (
          <li key={name}>
            <span>
              <b>{title}</b> in {texts.length === 1 ? '1 word' : `${texts.length} words`}
              <small>{summary}</small>
              <small class="which">
                {texts.slice(0, 12).join(', ')}
                {texts.length > 12 ? ', …' : ''}
              </small>
            </span>
            {marked.includes(name) ? (
              <span class="yours">marked</span>
            ) : (
              <button
                type="button"
                onClick={() => {
                  void add({ pattern: name }, `a mark on ${title}`)
                }}
              >
                Mark it<span class="only-heard"> {title}</span>
              </button>
            )}
          </li>
        ))}
      </ul>
    </section>
  )
}

interface WordsProps {
  readonly words: readonly DeskWord[]
}

export function ByLetters() {
  const { add } = useMarks()
  return (
    <section class="by-letters" aria-labelledby="letters-head">
      <h3 id="letters-head">Or exact letters</h3>
      <TextField
        label="Letters, such as ea, or a_e for letters with another between"
        value=""
        commit={letters => letters !== '' && add({ letters }, `a mark on ${letters}`)}
      />
    </section>
  )
}

const features = ['part of speech', 'sounds', 'syllables', 'plural'] as const

/** Every word of which something is so: that it is a noun, has two syllables. */
export function ByWord({ words }: WordsProps) {
  const { add } = useMarks()
  const plain = usePatternTitle()
  const [feature, setFeature] = useState('')
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
          label="Mark words by their"
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
              value !== '' && add({ [feature]: value }, `a mark on ${markTitle({ [feature]: value }, plain)}`)
            }
          />
        )}
      </div>
    </section>
  )
}
