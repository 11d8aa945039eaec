import type { Word } from '../src/words/word.js'

/** A text to be set as the words of a set are, in their size and on their baseline, with nothing to mark on it. */
export function plainWord(text: string): Word {
  return {
    text,
    known: false,
    source: 'teacher',
    pronunciations: [],
    graphemes: [],
    soundCount: 0,
    phonemeCount: 0,
    pieces: [],
    syllables: [],
    patterns: [],
    partsOfSpeech: [],
    plural: null,
  }
}
