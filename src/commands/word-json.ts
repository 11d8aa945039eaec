import type { Word } from '../words/word.js'

/** A studied word as `study --json` and `find --json` print it; what the word does not have stays out. */
export function wordJson({ text, clue: _clue, picture: _picture, ...rest }: Word): object {
  return { word: text, ...rest }
}
