/** Which patterns are marked, in which order, and how each looks; her words drawn with them. */
import { useState } from 'preact/hooks'
import type { Change, Data, NamedChoice } from '../messages.js'
import { keyIn, listOf, textChange, textOf } from '../plan-values.js'
import { idOf, useDesk } from './desk-state.js'
import { ChoiceField, Fold, TextField } from './fields.js'
import { Pick } from './pick-letters.js'
import { RowTools } from './row-tools.js'
import { WordPicture } from './word-picture.js'

/** Dark enough on white to be read, and apart from one another for most eyes; any other is written. */
const colours = [
  { name: 'blue', value: '#00618a' },
  { name: 'red', value: '#a3231f' },
  { name: 'green', value: '#2b6622' },
  { name: 'purple', value: '#6b3a8c' },
  { name: 'brown', value: '#7a4a12' },
]

const wholeWords = ['part of speech', 'plural', 'sounds', 'syllables']

export function Marks() {
  const { plan } = useDesk()
  const marks = listOf(plan.data, 'marks')
  const words = plan.words.flatMap((word, index) => (word === null ? [] : [{ word, index }]))
  const [picked, setPicked] = useState<number>()
  const chosen = words.find(({ index }) => index === picked)
  return (
    <section aria-labelledby="marks-head">
      <h2 id="marks-head">Marks</h2>
      <p class="lead">
        What is marked, in the order of the key. A mark without a style takes the next black one that any
        copier keeps apart.
      </p>
      <ul class="preview" aria-label="Your words as they are marked">
        {words.map(({ word, index }) => (
          <li key={index}>
            <button
              type="button"
              class="pick-word"
              aria-expanded={picked === index}
              onClick={() => setPicked(picked === index ? undefined : index)}
            >
              <WordPicture word={word} />
            </button>
          </li>
        ))}
      </ul>
      {chosen === undefined ? (
        <p>Press a word to pick letters in it and say what is to be marked.</p>
      ) : (
        <Pick
          key={chosen.index}
          entry={listOf(plan.data, 'words')[chosen.index] ?? ''}
          index={chosen.index}
          word={chosen.word}
        />
      )}
      {marks.length === 0 && <p>Nothing is marked by your choice yet. Pick from what your words show:</p>}
      <ol class="marks">
        {marks.map((entry, index) => (
          <MarkRow key={index} entry={entry} index={index} count={marks.length} />
        ))}
      </ol>
      <Shown marks={marks} />
      <ByLetters count={marks.length} />
      <ByWord count={marks.length} />
    </section>
  )
}

/** `digraph-blend`, `letters ea`, `part of speech: noun` */
function targetIn(entry: Data): { readonly key: string; readonly value: string } {
  const keys = ['pattern', 'letters', ...wholeWords]
  const key = keys.find(each => textOf(entry, each) !== '') ?? ''
  return { key, value: textOf(entry, key) }
}

function titleOf(entry: Data): string {
  const { key, value } = targetIn(entry)
  return key === 'pattern' ? value : key === 'letters' ? `letters ${value}` : `${key}: ${value}`
}

interface MarkRowProps {
  readonly entry: Data
  readonly index: number
  readonly count: number
}

function MarkRow({ entry, index, count }: MarkRowProps) {
  const { plan, names, change } = useDesk()
  const title = titleOf(entry)
  const look = plan.looks[index] ?? null
  const path = (...spellings: readonly string[]) => ['marks', index, keyIn(entry, ...spellings)]
  const set = (spellings: readonly string[], says: string) => (value: string) =>
    change(`${says} of ${title}`, textChange(entry, path(...spellings), value))
  const { key } = targetIn(entry)
  const line = textOf(entry, 'line')
  const outline = textOf(entry, 'outline')
  const color = textOf(entry, 'color', 'colour')
  return (
    <li class="mark-row">
      <div class="mark-head">
        <h3 id={idOf(['marks', index])} tabIndex={-1}>
          {look !== null && <img class="look" src={look} alt="" />} {title}
        </h3>
        <RowTools list="marks" index={index} count={count} title={title} after="shown-head" />
      </div>
      <Fold
        summary={
          <>
            How it looks<span class="only-heard"> {title}</span>
          </>
        }
      >
        <Pictured
          legend="Line"
          kind="line"
          choices={names.lines}
          value={line}
          id={idOf(['marks', index, 'line'])}
          pick={set(['line'], 'the line')}
        />
        <Pictured
          legend="Outline"
          kind="outline"
          choices={names.outlines}
          value={outline}
          id={idOf(['marks', index, 'outline'])}
          pick={set(['outline'], 'the outline')}
        />
        <Colours
          value={color}
          id={idOf(['marks', index, 'color'])}
          pick={set(['color', 'colour'], 'the colour')}
        />
        <div class="fields">
          <TextField
            label="Words for the key"
            value={textOf(entry, 'label')}
            placeholder={title}
            id={idOf(['marks', index, 'label'])}
            commit={set(['label'], 'the wording')}
          />
          <TextField
            label="Small letters beside it"
            value={textOf(entry, 'tag')}
            id={idOf(['marks', index, 'tag'])}
            commit={set(['tag'], 'the small letters')}
          />
          {!wholeWords.includes(key) && (
            <ChoiceField
              label="Where in the word"
              value={textOf(entry, 'place')}
              none="anywhere"
              choices={['beginning', 'middle', 'end']}
              id={idOf(['marks', index, 'place'])}
              commit={set(['place'], 'the place')}
            />
          )}
          {textOf(entry, 'pattern') === 'consonant-digraph' && (
            <ChoiceField
              label="Inside blends too (the sh of shrub)"
              value={textOf(entry, 'inside blends')}
              none="no"
              choices={['yes', 'no']}
              commit={set(['inside blends'], 'inside blends')}
            />
          )}
        </div>
      </Fold>
    </li>
  )
}

interface PicturedProps {
  readonly legend: string
  readonly kind: 'line' | 'outline'
  readonly choices: readonly NamedChoice[]
  readonly value: string
  readonly id: string
  readonly pick: (value: string) => unknown
}

/** Each style under letters, as the engine draws it. */
function Pictured({ legend, kind, choices, value, id, pick }: PicturedProps) {
  const group = `${id}-choice`
  return (
    <fieldset class="pictured">
      <legend id={id} tabIndex={-1}>
        {legend}
      </legend>
      <label class="style">
        <input type="radio" name={group} checked={value === ''} onChange={() => pick('')} />
        <span>none chosen</span>
      </label>
      {choices.map(({ name }) => (
        <label key={name} class="style">
          <input
            type="radio"
            name={group}
            checked={value.toLowerCase() === name}
            onChange={() => pick(name)}
          />
          <img src={`/styles/${kind}-${name}.svg`} alt="" loading="lazy" />
          <span>{name}</span>
        </label>
      ))}
    </fieldset>
  )
}

function Colours({ value, id, pick }: Pick<PicturedProps, 'value' | 'id' | 'pick'>) {
  const group = `${id}-choice`
  const known = colours.some(each => each.value === value.toLowerCase() || each.name === value.toLowerCase())
  return (
    <fieldset class="pictured">
      <legend id={id} tabIndex={-1}>
        Colour
      </legend>
      <label class="style">
        <input type="radio" name={group} checked={value === ''} onChange={() => pick('')} />
        <span>black</span>
      </label>
      {colours.map(each => (
        <label key={each.name} class="style">
          <input
            type="radio"
            name={group}
            checked={value.toLowerCase() === each.value || value.toLowerCase() === each.name}
            onChange={() => pick(each.value)}
          />
          <svg width="28" height="16" aria-hidden="true">
            <rect width="28" height="16" rx="3" fill={each.value} />
          </svg>
          <span>{each.name}</span>
        </label>
      ))}
      <TextField label="Another, as # and six digits" value={known ? '' : value} commit={pick} />
      <small>
        A colour is only ever an addition: copiers and some eyes do not show it, so give it a line of its own
        too.
      </small>
    </fieldset>
  )
}

/** Patterns that the words show, with how many of them do. */
function Shown({ marks }: { readonly marks: readonly Data[] }) {
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

function ByLetters({ count }: { readonly count: number }) {
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
function ByWord({ count }: { readonly count: number }) {
  const { plan, change } = useDesk()
  const [feature, setFeature] = useState('')
  const words = plan.words.flatMap(word => (word === null ? [] : [word]))
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
