/** A word divided by pointing into sounds or syllables. */
import type { ComponentChildren } from 'preact'
import { isParted, partedAt } from '../divided.js'

export interface DivisionProps {
  readonly title: string
  readonly word: string
  readonly pieces: readonly { readonly letters: string; readonly silent: boolean }[]
  readonly id: string
  readonly isYours: boolean
  readonly mayBeSilent?: boolean
  /** What gives the study's own again. */
  readonly takeBack: ComponentChildren
  readonly write: (pieces: readonly { readonly letters: string; readonly silent: boolean }[]) => unknown
}

/** Between every two letters a button parts or joins them. */
export function Division({
  title,
  word,
  pieces,
  id,
  isYours,
  mayBeSilent = false,
  takeBack,
  write,
}: DivisionProps) {
  const letters = [...word]
  return (
    <fieldset class="divided" aria-label={`${title} of ${word}`}>
      <h3 id={id} tabIndex={-1}>
        {title}
        {isYours && <span class="yours">yours</span>}
      </h3>
      <div class="letters">
        {letters.map((letter, at) => (
          <span key={at}>
            {at > 0 && (
              <button
                type="button"
                class="gap"
                aria-pressed={isParted(pieces, at)}
                aria-label={`Part ${title.toLowerCase()} between ${letters.slice(0, at).join('')} and ${letters.slice(at).join('')}`}
                title={isParted(pieces, at) ? 'Join these' : 'Part these'}
                onClick={() => write(partedAt(pieces, at))}
              >
                {isParted(pieces, at) ? '|' : '·'}
              </button>
            )}
            <b>{letter}</b>
          </span>
        ))}
      </div>
      {mayBeSilent && (
        <div class="pieces">
          {pieces.map((piece, at) => (
            <button
              key={at}
              type="button"
              class="piece"
              aria-pressed={piece.silent}
              aria-label={`${piece.letters} says nothing`}
              onClick={() =>
                write(pieces.map((each, index) => (index === at ? { ...each, silent: !each.silent } : each)))
              }
            >
              {piece.silent ? `(${piece.letters})` : piece.letters}
            </button>
          ))}
          <small>Press a piece that says nothing: it goes in brackets and is not counted.</small>
        </div>
      )}
      {takeBack}
    </fieldset>
  )
}
