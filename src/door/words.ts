import { disk } from '../plan/disk/disk.js'
import { typedWordList } from '../plan/words/typed-words.js'
import { formatProblem, type Problem } from '../problems.js'
import { type Lexicon, openLexicon } from '../words/lexicon/lexicon.js'
import { patternNames } from '../words/patterns/index.js'
import { studyWord } from '../words/study.js'
import type { Word } from '../words/word.js'

/** A studied word: an entry of `oaktag study --json`. */
export type StudiedWord = { readonly word: string } & Omit<Word, 'text' | 'clue' | 'picture'>

/** A word that is none: digits, spaces, other signs, more than thirty characters. */
export class NoWord extends Error {
  constructor(readonly problems: readonly Problem[]) {
    super(problems.map(formatProblem).join('\n'))
  }
}

/**
 * Studies words, in the order given: sounds, syllables, patterns, parts of speech, plural. What the lexicon lacks is
 * a guess and says so (`known: false`, `source: 'guess'`). Gives what `oaktag study --json` prints.
 * @throws NoWord with a problem for each that is no word
 */
export function study(words: readonly string[]): readonly StudiedWord[] {
  const list = typedWordList({ words, files: disk, patterns: patternNames })
  if (!list.ok) throw new NoWord(list.problems)
  const lexicon = openLexicon()
  return list.value.map(word => {
    const studied = studyWord(word, lexicon)
    if (!studied.ok) throw new NoWord(studied.problems)
    return studiedWord(studied.value)
  })
}

/** The word as the library gives it and `--json` prints it; what the teacher alone knows stays with her plan. */
export function studiedWord({ text, clue: _clue, picture: _picture, ...rest }: Word): StudiedWord {
  return { word: text, ...rest }
}

export type { Lexicon, Word }
