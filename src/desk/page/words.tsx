/** The list of words, each with its study beside it. */
import { useEffect, useRef, useState } from 'preact/hooks'
import type { Change, Data, DeskWord, NoWordHere } from '../messages.js'
import { isKeys, keyIn, listOf, pastedWords, textChange, textOf, valueAt, wordEntry } from '../plan-values.js'
import { study } from './connection.js'
import { idOf, useDesk } from './desk-state.js'
import { ChoiceField, Fold } from './fields.js'
import { RowTools } from './row-tools.js'
import { Told } from './told.js'
import { WordCloser } from './word-closer.js'
import { WordPicture } from './word-picture.js'

/** A pause in typing after which the plan takes the word. */
const REST_MS = 150
/** The server studies no more of them. */
const mostShown = 300

export function Words() {
  const { plan } = useDesk()
  const words = listOf(plan.data, 'words')
  return (
    <section aria-labelledby="words-head">
      <h2 id="words-head">Words</h2>
      <p class="lead">
        Type a word and press Enter. Beside it stands what it shows; open it to look closer or to say it is
        otherwise in your class.
      </p>
      <ol class="words">
        {words.slice(0, mostShown).map((entry, index) => (
          // An entry is its place in the list: a word that is being typed must stay the same field.
          <WordRow
            key={index}
            entry={entry}
            index={index}
            count={words.length}
            told={plan.words[index] ?? null}
          />
        ))}
        <NewWord count={words.length} />
      </ol>
      {words.length > mostShown && (
        <p>
          The list has {words.length} words; the first {mostShown} are shown here, all of them are in the
          file.
        </p>
      )}
      <Paste count={words.length} />
      <ClassWays />
      {plan.otherWords.length > 0 && (
        <section aria-labelledby="other-words">
          <h3 id="other-words">Words that stand elsewhere</h3>
          <p>These come from a file that the plan names, or from its groups; they are changed there.</p>
          <ul class="others">
            {plan.otherWords.map(word => (
              <li key={word.text}>
                <WordPicture word={word} /> <Told word={word} />
              </li>
            ))}
          </ul>
        </section>
      )}
    </section>
  )
}

interface WordRowProps {
  readonly entry: Data
  readonly index: number
  readonly count: number
  readonly told: DeskWord | null
}

function WordRow({ entry, index, count, told }: WordRowProps) {
  const { change } = useDesk()
  const text = typeof entry === 'string' ? entry : textOf(entry, 'word')
  const path = isKeys(entry) ? ['words', index, keyIn(entry, 'word')] : ['words', index]
  const [gesture] = useState(() => `word ${Math.random()}`)
  const isFile = typeof entry === 'string' && /\.(?:txt|csv)$/i.test(entry)
  const commit = (typed: string) => {
    const more = pastedWords(typed)
    if (more.length > 1) {
      const [first, ...rest] = more
      const changes: Change[] = [
        { kind: 'set', path, value: first?.word ?? text },
        { kind: 'insert', path: ['words'], at: index + 1, values: rest.map(wordEntry) },
      ]
      return change('the pasted words', changes)
    }
    return change(`the word ${typed}`, [{ kind: 'set', path, value: typed }], `${gesture} ${index}`)
  }
  return (
    <li class="word-row">
      <WordField
        label={`Word ${index + 1}`}
        value={text}
        id={idOf(['words', index])}
        told={told}
        commit={commit}
      >
        {isFile && <p>A list in a file beside the plan: its words are changed there.</p>}
      </WordField>
      <RowTools list="words" index={index} count={count} title={text} after="new-word" />
      {told !== null && !isFile && <WordCloser entry={entry} index={index} word={told} />}
    </li>
  )
}

interface WordFieldProps {
  readonly label: string
  readonly value: string
  readonly id: string
  readonly told: DeskWord | null
  readonly commit: (typed: string) => Promise<boolean>
  readonly children?: preact.ComponentChildren
}

/** Studied at every key; the plan takes it at a rest, at Enter, or when it is left. */
function WordField({ label, value, id, told, commit, children }: WordFieldProps) {
  const [typed, setTyped] = useState(value)
  const [live, setLive] = useState<DeskWord | NoWordHere>()
  const rest = useRef<ReturnType<typeof setTimeout>>()
  const asked = useRef(0)
  const isBeingTyped = useRef(false)
  /** Taken at the Enter key, it is not taken again when the field is left. */
  const taken = useRef('')
  useEffect(() => {
    if (!isBeingTyped.current) setTyped(value)
  }, [value])
  const take = (text: string) => {
    const own = text.trim()
    clearTimeout(rest.current)
    isBeingTyped.current = false
    if (own === '' || own === value) return setTyped(value)
    // What is no word stays in the field, with what is wrong with it, and comes into no plan.
    const isNone = live !== undefined && 'trouble' in live && pastedWords(own).length < 2
    if (isNone || own === taken.current) return
    taken.current = own
    void commit(own)
  }
  const type = (text: string) => {
    taken.current = ''
    setTyped(text)
    isBeingTyped.current = true
    clearTimeout(rest.current)
    asked.current += 1
    const own = asked.current
    if (text.trim() === '') return setLive(undefined)
    void study([text.trim()]).then(([found]) => {
      if (own !== asked.current) return
      setLive(found)
      if (found !== undefined && 'text' in found)
        rest.current = setTimeout(async () => {
          if (own !== asked.current || text.trim() === value) return
          await commit(text.trim())
          // From now on it is the plan's word again, whoever changes it.
          if (own === asked.current) isBeingTyped.current = false
        }, REST_MS)
    })
  }
  const isOther = typed.trim() !== value && live !== undefined
  const shown = isOther && 'text' in live ? live : told
  return (
    <div class="word-line">
      <input
        id={id}
        class="word-input"
        aria-label={label}
        value={typed}
        autocomplete="off"
        autocapitalize="off"
        spellcheck={false}
        onInput={event => type(event.currentTarget.value)}
        onBlur={event => take(event.currentTarget.value)}
        onKeyDown={event => {
          if (event.key !== 'Enter') return
          take(event.currentTarget.value)
          document.getElementById('new-word')?.focus()
        }}
      />
      {isOther && 'trouble' in live ? (
        <p class="wrong">
          {live.trouble} {live.advice}
        </p>
      ) : (
        shown !== null && (
          <>
            <WordPicture word={shown} />
            <Told word={shown} />
          </>
        )
      )}
      {children}
    </div>
  )
}

function NewWord({ count }: { readonly count: number }) {
  const { change, say } = useDesk()
  const [typed, setTyped] = useState('')
  const [live, setLive] = useState<DeskWord | NoWordHere>()
  const asked = useRef(0)
  const add = async () => {
    const words = pastedWords(typed)
    if (words.length === 0) return
    if (words.length === 1 && live !== undefined && 'trouble' in live) return say(live.trouble)
    const says = words.length === 1 ? `the word ${words[0]?.word}` : `${words.length} words`
    const done = await change(says, [
      { kind: 'insert', path: ['words'], at: count, values: words.map(wordEntry) },
    ])
    if (!done) return
    setTyped('')
    setLive(undefined)
    say(`Added: ${says}.`)
  }
  return (
    <li class="word-row new">
      <div class="word-line">
        <input
          id="new-word"
          class="word-input"
          aria-label="New word"
          placeholder="new word"
          value={typed}
          autocomplete="off"
          autocapitalize="off"
          spellcheck={false}
          onInput={event => {
            const text = event.currentTarget.value
            setTyped(text)
            asked.current += 1
            const own = asked.current
            if (text.trim() === '') return setLive(undefined)
            void study([text.trim()]).then(([found]) => own === asked.current && setLive(found))
          }}
          onPaste={event => {
            const pasted = event.clipboardData?.getData('text/plain') ?? ''
            if (!/[\n\t]/.test(pasted.trim())) return
            event.preventDefault()
            void change('the pasted words', [
              { kind: 'insert', path: ['words'], at: count, values: pastedWords(pasted).map(wordEntry) },
            ])
          }}
          onKeyDown={event => {
            if (event.key === 'Enter') void add()
          }}
        />
        {live !== undefined && 'trouble' in live && (
          <p class="wrong">
            {live.trouble} {live.advice}
          </p>
        )}
        {live !== undefined && 'text' in live && (
          <>
            <WordPicture word={live} />
            <Told word={live} />
          </>
        )}
      </div>
      <div class="row-tools">
        <button type="button" disabled={typed.trim() === ''} onClick={() => void add()}>
          Add
        </button>
      </div>
    </li>
  )
}

/** What holds for all words: how the class speaks and counts. */
function ClassWays() {
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

function Paste({ count }: { readonly count: number }) {
  const { change } = useDesk()
  const [text, setText] = useState('')
  const words = pastedWords(text)
  const add = async () => {
    const values = words.map(wordEntry)
    if (await change(`${words.length} words`, [{ kind: 'insert', path: ['words'], at: count, values }]))
      setText('')
  }
  return (
    <details class="fold">
      <summary>Paste a list</summary>
      <div class="folded">
        <label class="field long">
          <span>Words, one a line, or rows of a spreadsheet (words first, clues beside them)</span>
          <textarea
            rows={6}
            value={text}
            spellcheck={false}
            onInput={event => setText(event.currentTarget.value)}
          />
        </label>
        <button type="button" class="main" disabled={words.length === 0} onClick={() => void add()}>
          {words.length === 0
            ? 'Add the words'
            : words.length === 1
              ? 'Add 1 word'
              : `Add ${words.length} words`}
        </button>
      </div>
    </details>
  )
}
