/** Words that go with a list: as hard as its own, with no ending that the list's words have not. */
import type { Lexicon } from '../lexicon/entry.js'
import type { SortableWord } from '../sortable-word.js'
import { isCandidate } from './find-words.js'
import { likePlan } from './like-plan.js'
import type { OfferedWord } from './offered-word.js'

export interface WordsLikeTask {
  readonly words: readonly SortableWord[]
  /** The most familiar first. */
  readonly offered: () => readonly OfferedWord[]
  readonly lexicon: Lexicon
  /** Whether the class can read it, where its class file says what is taught. */
  readonly readable?: ((word: OfferedWord) => boolean) | undefined
}

/** What is added to a word before or behind it. */
const added = /^(?:ending-(?:s|es|ed|ing|er|est)|suffix|prefix|contraction|compound)$/

/** A row that can be read again and again; nothing is read before it is asked for. */
export function wordsLike({
  words,
  offered,
  lexicon,
  readable,
}: WordsLikeTask): () => Iterable<SortableWord> {
  let fitting: readonly OfferedWord[] | undefined
  const choose = () => {
    const familiarity = (word: string) => lexicon.lookUp(word)?.familiarity ?? 0
    const { isOfItsLevel } = likePlan({ words, marks: [], familiarity })
    const shown = new Set(words.flatMap(word => word.patterns.map(({ pattern }) => pattern)))
    const wishes = { patterns: [...shown] }
    const isPlain = ({ findings }: OfferedWord) =>
      findings.every(({ pattern }) => shown.has(pattern) || !added.test(pattern))
    return offered()
      .filter(word => isCandidate(word, wishes) && isOfItsLevel(word) && isPlain(word))
      .filter(word => readable?.(word) !== false)
  }
  return function* () {
    fitting ??= choose()
    for (const { sortable } of fitting) yield sortable
  }
}
