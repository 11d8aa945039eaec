/** Words that come to the list: typed one after the other, or pasted. */
import { useMemo, useRef, useState } from 'preact/hooks'
import type { DeskWord, NoWordHere } from '../messages.js'
import { type PastedWord, pastedWords, wordEntry } from '../pasted-words.js'
import { spelling } from '../plan-values.js'
import { study } from './connection.js'
import { useDesk } from './desk-state.js'
import { useList } from './listed.js'
import { Told } from './told.js'
import { WordPicture } from './word-picture.js'

/** Words that are not in the list yet come to its end; it is said which are there already. */
function useAdding(): (words: readonly PastedWord[]) => Promise<boolean> {
  const { say } = useDesk()
  const { path, holds, entries: list, change } = useList()
  // A list with a word a line holds nothing else.
  const entryFor = (pasted: PastedWord) => (holds === 'word' ? pasted.word : wordEntry(pasted))
  return async words => {
    const there = new Set(list.map(spelling))
    const isThere = ({ word }: PastedWord) => there.has(word.toLowerCase())
    const fresh = words.filter(each => !isThere(each))
    const already = words.filter(isThere).map(({ word }) => word)
    const besides = already.length === 0 ? '' : ` In the list already: ${inShort(already)}.`
    if (fresh.length === 0) {
      say(besides.trim())
      return true
    }
    const says = fresh.length === 1 ? `the word ${fresh[0]?.word}` : `${fresh.length} words`
    const done = await change(says, [{ kind: 'insert', path, at: list.length, values: fresh.map(entryFor) }])
    if (done) say(`Added: ${says}.${besides}`)
    return done
  }
}

/** As many as anybody looks through before they are taken. */
const mostShown = 100

function inShort(words: readonly string[]): string {
  const more = words.length - 10
  return more > 1 ? `${words.slice(0, 10).join(', ')} and ${more} more` : words.join(', ')
}

interface WhoseProps {
  /** Whose words they are, where it is not the class. */
  readonly whose: string
}

export function NewWord({ whose }: WhoseProps) {
  const { say } = useDesk()
  const { newWordId } = useList()
  const addWords = useAdding()
  const [typed, setTyped] = useState('')
  const [studied, setStudied] = useState<{ readonly of: string; readonly found: DeskWord | NoWordHere }>()
  const asked = useRef(0)
  const live = studied?.of === typed.trim() ? studied.found : undefined
  const add = async () => {
    const words = pastedWords(typed)
    const isAsTyped = words.length === 0 || words[0]?.word === typed.trim()
    if (isAsTyped && live !== undefined && 'trouble' in live) return say(live.trouble)
    if (words.length === 0) return
    // Free for the next word at once: whoever types fast has begun it before this one is written down.
    setTyped('')
    const done = await addWords(words)
    if (!done) setTyped(now => (now === '' ? typed : now))
  }
  return (
    <li class="word-row new">
      <div class="word-line">
        <input
          id={newWordId}
          class="word-input"
          aria-label={whose === '' ? 'New word' : `New word for ${whose}`}
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
            void addWords(pastedWords(pasted))
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

export function Paste({ whose }: WhoseProps) {
  const addWords = useAdding()
  const [text, setText] = useState('')
  const words = useMemo(() => pastedWords(text), [text])
  const add = async () => {
    if (await addWords(words)) setText(now => (now === text ? '' : now))
  }
  return (
    <details class="fold">
      <summary>
        Paste a list<span class="only-heard">{whose === '' ? '' : ` for ${whose}`}</span>
      </summary>
      <div class="folded">
        <label class="field long">
          <span>
            Words, one a line or with commas, or rows of a spreadsheet (words first, clues beside them)
          </span>
          <textarea
            rows={6}
            value={text}
            spellcheck={false}
            onInput={event => setText(event.currentTarget.value)}
          />
        </label>
        {words.length > 0 && (
          <ul class="taken" aria-label="Words that are taken from it">
            {words.slice(0, mostShown).map(({ word, more }) => (
              <li key={word}>
                {word}
                {more.clue !== undefined && <small> {more.clue}</small>}
              </li>
            ))}
            {words.length > mostShown && <li>and {words.length - mostShown} more</li>}
          </ul>
        )}
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
