/** Words that come to the list: typed one after the other, or pasted. */
import { useRef, useState } from 'preact/hooks'
import type { DeskWord, NoWordHere } from '../messages.js'
import { pastedWords, wordEntry } from '../plan-values.js'
import { study } from './connection.js'
import { useDesk } from './desk-state.js'
import { Told } from './told.js'
import { WordPicture } from './word-picture.js'

export function NewWord({ count }: { readonly count: number }) {
  const { change, say } = useDesk()
  const [typed, setTyped] = useState('')
  const [studied, setStudied] = useState<{ readonly of: string; readonly found: DeskWord | NoWordHere }>()
  const asked = useRef(0)
  const live = studied?.of === typed.trim() ? studied.found : undefined
  const add = async () => {
    const words = pastedWords(typed)
    if (words.length === 0) return
    if (words.length === 1 && live !== undefined && 'trouble' in live) return say(live.trouble)
    const says = words.length === 1 ? `the word ${words[0]?.word}` : `${words.length} words`
    // Free for the next word at once: whoever types fast has begun it before this one is written down.
    setTyped('')
    const done = await change(says, [
      { kind: 'insert', path: ['words'], at: count, values: words.map(wordEntry) },
    ])
    if (done) say(`Added: ${says}.`)
    else setTyped(now => (now === '' ? typed : now))
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
            const of = text.trim()
            if (of === '') return
            void study([of]).then(([found]) => {
              if (own === asked.current && found !== undefined) setStudied({ of, found })
            })
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

export function Paste({ count }: { readonly count: number }) {
  const { change } = useDesk()
  const [text, setText] = useState('')
  const words = pastedWords(text)
  const add = async () => {
    const values = words.map(wordEntry)
    if (await change(`${words.length} words`, [{ kind: 'insert', path: ['words'], at: count, values }]))
      setText(now => (now === text ? '' : now))
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
