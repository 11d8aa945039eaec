/** A word while it is typed, with its study beside it. */
import type { ComponentChildren } from 'preact'
import { useEffect, useRef, useState } from 'preact/hooks'
import type { DeskWord, NoWordHere } from '../messages.js'
import { pastedWords } from '../pasted-words.js'
import { study } from './connection.js'
import { Told } from './told.js'
import { WordPicture } from './word-picture.js'

/** A pause in typing after which the plan takes the word. */
const REST_MS = 150

export interface WordFieldProps {
  readonly label: string
  readonly value: string
  readonly id: string
  /** Where the keyboard goes on at the Enter key. */
  readonly next: string
  readonly told: DeskWord | NoWordHere | null
  readonly commit: (typed: string) => Promise<boolean>
  readonly children?: ComponentChildren
}

/** Studied at every key; the plan takes it at a rest, at Enter, or when it is left. */
export function WordField({ label, value, id, next, told, commit, children }: WordFieldProps) {
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
  const shown = typed.trim() !== value && live !== undefined ? live : told
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
          document.getElementById(next)?.focus()
        }}
      />
      {shown !== null &&
        ('trouble' in shown ? (
          <p class="wrong">
            {shown.trouble} {shown.advice}
          </p>
        ) : (
          <>
            <WordPicture word={shown} />
            <Told word={shown} />
          </>
        ))}
      {children}
    </div>
  )
}
