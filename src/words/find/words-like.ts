/** Words that go with a list, studied: as hard as its own, with no ending that the list's words have not. */
import type { Lexicon } from '../lexicon/entry.js'
import { type ClassWays, studyWord } from '../study.js'
import type { Word } from '../word.js'
import { isCandidate } from './find-words.js'
import { likePlan } from './like-plan.js'
import type { OfferedWord } from './offered-word.js'

export interface WordsLikeTask {
  readonly words: readonly Word[]
  /** The most familiar first. */
  readonly offered: readonly OfferedWord[]
  readonly lexicon: Lexicon
  readonly ways: ClassWays
  /** Whether the class can read it, where its class file says what is taught. */
  readonly readable?: ((word: OfferedWord) => boolean) | undefined
}

/** So many are looked at; who finds none among them is told of none. */
const mostStudied = 2500

/** What is added to a word before or behind it. */
const added = /^(?:ending-(?:s|es|ed|ing|er|est)|suffix|prefix|contraction|compound)$/

/** A row that can be read again and again; each word is studied when it is first reached. */
export function wordsLike({ words, offered, lexicon, ways, readable }: WordsLikeTask): () => Iterable<Word> {
  const familiarity = (word: string) => lexicon.lookUp(word)?.familiarity ?? 0
  const { isOfItsLevel } = likePlan({ words, marks: [], familiarity })
  const shown = new Set(words.flatMap(word => word.patterns.map(({ pattern }) => pattern)))
  const patterns = [...shown]
  const fitting = offered.filter(
    word =>
      isCandidate(word, { patterns }) &&
      isOfItsLevel(word) &&
      word.findings.every(({ pattern }) => shown.has(pattern) || !added.test(pattern)) &&
      readable?.(word) !== false,
  )
  const studied: Word[] = []
  return function* () {
    for (const [index, { text }] of fitting.slice(0, mostStudied).entries()) {
      const word = studied[index] ?? known(text, lexicon, ways)
      if (word === undefined) return
      studied[index] = word
      yield word
    }
  }
}

function known(text: string, lexicon: Lexicon, ways: ClassWays): Word | undefined {
  const word = studyWord({ text, place: { file: 'lexicon' }, overrides: {} }, lexicon, ways)
  return word.ok ? word.value : undefined
}
