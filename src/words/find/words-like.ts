/** Words that go with a list: as hard as its own, with no ending that the list's words have not. */
import { keptOfLate } from '../../kept-of-late.js'
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
  return function* () {
    fitting ??= likeList(words, offered(), lexicon).filter(word => readable?.(word) !== false)
    for (const { sortable } of fitting) yield sortable
  }
}

/** A list is gone through for several things of a week, and again while only marks change. */
const LISTS_HELD = 3

const chosenOfLate = new WeakMap<
  readonly OfferedWord[],
  (list: string, choose: () => readonly OfferedWord[]) => readonly OfferedWord[]
>()

function likeList(
  words: readonly SortableWord[],
  offered: readonly OfferedWord[],
  lexicon: Lexicon,
): readonly OfferedWord[] {
  const kept = chosenOfLate.get(offered) ?? keptOfLate(LISTS_HELD)
  chosenOfLate.set(offered, kept)
  const shown = new Set(words.flatMap(word => word.patterns.map(({ pattern }) => pattern)))
  const list = words.map(({ text, syllables, soundCount }) => [text, syllables.length, soundCount])
  return kept(JSON.stringify([list, [...shown]]), () => {
    const familiarity = (word: string) => lexicon.lookUp(word)?.familiarity ?? 0
    const { isOfItsLevel } = likePlan({ words, marks: [], familiarity })
    const wishes = { patterns: [...shown] }
    const isPlain = (word: OfferedWord) => addedTo(word).every(pattern => shown.has(pattern))
    return offered.filter(word => isOfItsLevel(word) && isCandidate(word, wishes) && isPlain(word))
  })
}

const knownAdded = new WeakMap<OfferedWord, readonly string[]>()

/** What a word shows is read from afar, and a week's list is gone through anew for each word that changes. */
function addedTo(word: OfferedWord): readonly string[] {
  const patterns =
    knownAdded.get(word) ?? word.findings.map(({ pattern }) => pattern).filter(pattern => added.test(pattern))
  knownAdded.set(word, patterns)
  return patterns
}
