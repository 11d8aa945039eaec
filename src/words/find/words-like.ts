/** Words that go with a list: as hard as its own, with no ending that the list's words have not. */
import { keptOfLate } from '../../kept-of-late.js'
import type { Lexicon } from '../lexicon/entry.js'
import type { SortableWord } from '../sortable-word.js'
import { isCandidate } from './find-words.js'
import { isOfLevel, likePlan } from './like-plan.js'
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
  let fitting: Iterable<OfferedWord> | undefined
  return function* () {
    fitting ??= likeList(words, offered(), lexicon)
    for (const word of fitting) if (readable?.(word) !== false) yield word.sortable
  }
}

/** Lists of one level: of a list in which a word is another, most others are as easy and as hard as its words were. */
const LEVELS_HELD = 3

const chosenOfLate = new WeakMap<
  readonly OfferedWord[],
  (level: string, choose: () => Iterable<OfferedWord>) => Iterable<OfferedWord>
>()

function likeList(
  words: readonly SortableWord[],
  offered: readonly OfferedWord[],
  lexicon: Lexicon,
): Iterable<OfferedWord> {
  const kept = chosenOfLate.get(offered) ?? keptOfLate(LEVELS_HELD)
  chosenOfLate.set(offered, kept)
  const patterns = [...new Set(words.flatMap(word => word.patterns.map(({ pattern }) => pattern)))].sort()
  const familiarity = (word: string) => lexicon.lookUp(word)?.familiarity ?? 0
  const { level, isOfItsLevel } = likePlan({ words, marks: [], familiarity })
  const shown = new Set(patterns)
  const isPlain = (word: OfferedWord) => addedTo(word).every(pattern => shown.has(pattern))
  const ofLevel = kept(JSON.stringify([level, patterns]), () =>
    readAsFar(() =>
      only(offered, word => isOfLevel(word, level) && isCandidate(word, { patterns }) && isPlain(word)),
    ),
  )
  return { [Symbol.iterator]: () => only(ofLevel, isOfItsLevel) }
}

function* only<T>(all: Iterable<T>, fits: (one: T) => boolean): Generator<T, void> {
  for (const one of all) if (fits(one)) yield one
}

/** Found only as far as somebody has read, and held so far: most who want words of twenty thousand want ten. */
function readAsFar<T>(find: () => Iterator<T>): Iterable<T> {
  const found: T[] = []
  let finding: Iterator<T> | undefined
  return {
    *[Symbol.iterator]() {
      for (let at = 0; ; at++) {
        if (at === found.length) {
          finding ??= find()
          const next = finding.next()
          if (next.done === true) return
          found.push(next.value)
        }
        yield found[at]!
      }
    },
  }
}

const knownAdded = new WeakMap<OfferedWord, readonly string[]>()

/** What a word shows is read from afar, and a week's list is gone through anew for a word that changes its level. */
function addedTo(word: OfferedWord): readonly string[] {
  const patterns =
    knownAdded.get(word) ?? word.findings.map(({ pattern }) => pattern).filter(pattern => added.test(pattern))
  knownAdded.set(word, patterns)
  return patterns
}
