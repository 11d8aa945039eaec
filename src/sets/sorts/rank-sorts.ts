/** Which sorts a list of words supports, the best first; the order of the list changes nothing. */
import type { PlanMark } from '../../plan/plan.js'
import type { SortableWord } from '../../words/sortable-word.js'
import { addsNothing } from './alike-sorts.js'
import { type Division, divisionsBy } from './divide.js'
import {
  howEndingIsAdded,
  howEndingSounds,
  howSSounds,
  partOfSpeech,
  pluralRule,
  whichAffix,
} from './ending-bases.js'
import { sharedParts, shortenedWord } from './joined-bases.js'
import { blendFamilies, firstAndLast, kindOfConsonants, whichConsonants } from './opening-bases.js'
import {
  hardAndSoft,
  hasPattern,
  whereItStands,
  whereLettersStand,
  whichLetters,
  whichVowelLetters,
} from './pattern-bases.js'
import type { Sort } from './sort.js'
import type { BasisFamily, SortBasis } from './sort-basis.js'
import { compare, type RatedSort, sortBy } from './sort-by.js'
import {
  howManySounds,
  howManySyllables,
  soundsOfOneSpelling,
  spellingsAtTheEnds,
  spellingsOfOneConsonant,
  spellingsOfOneVowel,
} from './sound-bases.js'
import { firstSyllable, lastSyllable, whereStressed } from './syllable-bases.js'
import {
  homophonesByVowel,
  kindOfVowel,
  shortOrLong,
  spellingsOfVowels,
  whichVowelSound,
  wordFamilies,
} from './vowel-bases.js'
import { vowelsWithR } from './vowel-with-r-bases.js'
import { weights } from './weights.js'

export type { Sort } from './sort.js'

export interface SortsWanted {
  /** What the plan marks: what she teaches with these words. */
  readonly marks?: readonly Pick<PlanMark, 'target'>[]
}

/** Where two sorts divide the words alike and are equally good, the one named first here stays. */
export function familiesFor(words: readonly SortableWord[]): readonly BasisFamily[] {
  return [
    hardAndSoft,
    howEndingSounds,
    howEndingIsAdded,
    spellingsOfOneVowel,
    vowelsWithR,
    soundsOfOneSpelling,
    spellingsAtTheEnds,
    spellingsOfOneConsonant,
    sharedParts(words),
    shortenedWord,
    whichAffix,
    homophonesByVowel(words),
    whichLetters,
    lastSyllable,
    spellingsOfVowels,
    whichVowelLetters,
    wordFamilies,
    firstSyllable,
    whichConsonants,
    blendFamilies,
    kindOfVowel,
    shortOrLong,
    whichVowelSound,
    kindOfConsonants,
    howSSounds,
    pluralRule,
    whereLettersStand,
    whereItStands,
    firstAndLast,
    whereStressed,
    howManySyllables,
    hasPattern,
    howManySounds,
    partOfSpeech,
  ]
}

/** The sorts that hold for these words, the best first; empty where no basis divides them into two fair columns. */
export function rankSorts(words: readonly SortableWord[], wanted: SortsWanted = {}): readonly Sort[] {
  return rankedSorts(words, wanted).map(({ sort }) => sort)
}

export function rankedSorts(words: readonly SortableWord[], wanted: SortsWanted = {}): readonly RatedSort[] {
  const fair = candidates(words, wanted).filter(rated => isFair(rated, words.length))
  // Sorting is stable: equal scores keep the order of the families.
  const ranked = fair.toSorted((a, b) => b.rating.score - a.rating.score)
  const kept: RatedSort[] = []
  for (const rated of ranked) if (!kept.some(better => addsNothing(rated, better))) kept.push(rated)
  return kept
}

/** The sort of this name (as in `Sort.name`), fair or not; undefined where these words show no such basis. */
export function sortNamed(list: readonly SortableWord[], name: string): RatedSort | undefined {
  const words = inAlphabet(list)
  const wanted = plainly(name)
  for (const family of familiesFor(words))
    for (const division of divisionsBy(family, words)) {
      if (plainly(family.basisOf(division.of).name) !== wanted) continue
      const found = sortBy({ words, family, division, isMarked: () => false })
      if (found !== undefined) return found
    }
  return undefined
}

function plainly(name: string): string {
  return name.toLowerCase().replace(/[-_\s]+/g, ' ')
}

/** `left over: leaf (is the only one of its kind: f to ves)`. */
export function leftoversInWords({ leftoverReasons }: Sort): string {
  return `left over: ${leftoverReasons.map(({ word, why }) => `${word} (${why})`).join(', ')}`
}

/** An open sort lets children find a rule; where only one rule holds there is one right answer and nothing to find. */
export function openSortNote(sorts: readonly Sort[]): string {
  const [best, second] = sorts
  if (best === undefined) {
    return 'These words cannot be sorted fairly: nothing divides them into two columns that hold enough of them.'
  }
  if (second === undefined) {
    return `These words can be sorted in one way only (${best.name}): hand them out as a closed sort, or add words that share something else.`
  }
  return `These words can be sorted in ${sorts.length} ways, so children can find more than one rule.`
}

function candidates(list: readonly SortableWord[], { marks = [] }: SortsWanted): readonly RatedSort[] {
  const words = inAlphabet(list)
  const isMarked = markedBy(marks)
  const sample = sampleOf(words)
  return familiesFor(words).flatMap(family => {
    const promising = sample === undefined ? undefined : promisingIn(family, sample)
    if (promising?.size === 0) return []
    return divisionsBy(family, words, promising)
      .filter(division => mayBeFair(division, words.length))
      .toSorted((a, b) => compare(a.of, b.of))
      .flatMap(division => sortBy({ words, family, division, isMarked, mostLeft: words.length / 2 }) ?? [])
  })
}

/** Lists beyond a week's are looked into before they are gone through. */
const sampleSize = 500

/** Words from all over a very long list. */
function sampleOf(words: readonly SortableWord[]): readonly SortableWord[] | undefined {
  if (words.length < 4 * sampleSize) return undefined
  const step = words.length / sampleSize
  return Array.from({ length: sampleSize }, (_, index) => words[Math.floor(index * step)]!)
}

/** A fair sort places a third; what has no place for even a fifth of five hundred words is none. */
function promisingIn(family: BasisFamily, sample: readonly SortableWord[]): ReadonlySet<string> {
  const promising = divisionsBy(family, sample).filter(({ columns, several }) => {
    let placed = several.size
    for (const column of columns.values()) placed += column.length
    return 5 * placed >= sample.length
  })
  return new Set(promising.map(({ of }) => of))
}

/** Each word once, so that whoever shuffles the list gets the same sorts to the letter. */
export function inAlphabet(words: readonly SortableWord[]): readonly SortableWord[] {
  const keyed = words.map(word => ({ word, key: word.text.toLowerCase() }))
  return keyed
    .toSorted((a, b) => compare(a.key, b.key) || compare(a.word.text, b.word.text))
    .map(({ word }) => word)
}

function markedBy(marks: readonly Pick<PlanMark, 'target'>[]) {
  const patterns = new Set<string>()
  const letters = new Set<string>()
  const features = new Set<string>()
  for (const { target } of marks) {
    if (target.kind === 'pattern') patterns.add(target.pattern)
    else if (target.kind === 'letters') letters.add(target.letters.toLowerCase())
    else features.add(target.feature)
  }
  return (basis: SortBasis, titles: readonly string[]) =>
    basis.patterns.some(pattern => patterns.has(pattern)) ||
    (basis.feature !== undefined && features.has(basis.feature)) ||
    titles.some(title => letters.has(title))
}

/** Fewer than a third in columns cannot be made up for; reasons are looked for only where it may be fair. */
function mayBeFair({ columns }: Division, words: number): boolean {
  let placed = 0
  for (const column of columns.values()) if (column.length > 1) placed += column.length
  return 3 * placed >= words
}

/**
 * Two columns of two words or more; at most a third of the list outside, oddballs counted half, and at most half of it
 * with them (`mostLeft`); at most two thirds of
 * it in a column of words that lack the pattern; a score that lop-sided columns do not reach.
 */
function isFair({ sort, rating, oddballs }: RatedSort, words: number): boolean {
  const { columns, leftovers } = sort
  const without = columns.find(column => column.without)?.words.length ?? 0
  return (
    columns.length > 1 &&
    3 * (leftovers.length - oddballs / 2) <= words &&
    3 * without <= 2 * words &&
    rating.fair >= weights.leastScore
  )
}
