/** Which sorts a list of words supports, the best first. */
import type { Word } from '../../words/word.js'
import { partOfSpeech, pluralRule } from './grammar-bases.js'
import { howItBegins, howItEnds } from './opening-bases.js'
import { hasPattern, howLettersSound, whereItStands, whichLetters } from './pattern-bases.js'
import type { Sort } from './sort.js'
import type { BasisFamily } from './sort-basis.js'
import { isDefensible, sortBy } from './sort-by.js'
import { howManySounds, howManySyllables, soundsOfOneSpelling, spellingsOfOneSound } from './sound-bases.js'
import { kindOfVowel, shortOrLong, whichVowelSound, wordFamilies } from './vowel-bases.js'

export type { Sort } from './sort.js'

/** Where two sorts divide the words alike, the one named first here stays. */
const families: readonly BasisFamily[] = [
  whichLetters,
  kindOfVowel,
  shortOrLong,
  soundsOfOneSpelling,
  howLettersSound,
  spellingsOfOneSound,
  whichVowelSound,
  wordFamilies,
  whereItStands,
  pluralRule,
  howItBegins,
  howItEnds,
  howManySyllables,
  howManySounds,
  partOfSpeech,
  hasPattern,
]

/** The sorts that hold for these words, the best first; empty where no basis divides them into two fair columns. */
export function rankSorts(words: readonly Word[]): readonly Sort[] {
  const sorts = candidates(words).filter(sort => isDefensible(sort, words.length))
  const ranked = [...sorts].sort((a, b) => b.score - a.score)
  return ranked.filter((sort, index) => !ranked.slice(0, index).some(better => addsNothing(sort, better)))
}

/** The sort of this name (as in `Sort.name`), fair or not; undefined where these words show no such basis. */
export function sortNamed(words: readonly Word[], name: string): Sort | undefined {
  const plain = (text: string) => text.toLowerCase().replace(/[-_\s]+/g, ' ')
  return candidates(words).find(sort => plain(sort.name) === plain(name))
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

function candidates(words: readonly Word[]): readonly Sort[] {
  return families
    .flatMap(family => family(words))
    .map(basis => sortBy(basis, words))
    .filter(sort => sort.columns.length > 1)
}

/** A sort by having a pattern or not adds nothing to a better one in which the words that have it are a column. */
function addsNothing(sort: Sort, better: Sort): boolean {
  if (dividesAlike(sort, better)) return true
  if (!sort.columns.some(column => column.without)) return false
  return sort.columns
    .filter(column => !column.without)
    .every(column => better.columns.some(other => wordsApart(column.words, other.words) <= 1))
}

function wordsApart(a: readonly string[], b: readonly string[]): number {
  return a.filter(word => !b.includes(word)).length + b.filter(word => !a.includes(word)).length
}

/** Two sorts are one and the same for a class when at most one word would lie in another column. */
function dividesAlike(a: Sort, b: Sort): boolean {
  if (a.columns.length !== b.columns.length) return false
  const placed = (sort: Sort) => sort.columns.reduce((sum, column) => sum + column.words.length, 0)
  const shared = a.columns.reduce((sum, column) => {
    const overlaps = b.columns.map(other => other.words.filter(word => column.words.includes(word)).length)
    return sum + Math.max(...overlaps)
  }, 0)
  return Math.max(placed(a), placed(b)) - shared <= 1
}
