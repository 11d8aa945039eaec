import type { StudiedLetters } from './pattern.js'

/** Keeps the answer for the word asked about last: the rules all ask of one word, then of the next. */
export function oncePerWord<T>(answer: (word: StudiedLetters) => T): (word: StudiedLetters) => T {
  let last: { readonly word: StudiedLetters; readonly value: T } | undefined
  return word => {
    if (last?.word !== word) last = { word, value: answer(word) }
    return last.value
  }
}
