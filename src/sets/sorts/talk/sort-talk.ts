/** The talk that a sort invites: questions to ask while it lies on the table, with answers where there is one. */
import type { SortableWord } from '../../../words/sortable-word.js'
import { inARow } from '../in-a-row.js'
import { keyWordOf } from '../key-word.js'
import type { LeftoverReason, SortColumn } from '../sort.js'
import { distinct } from '../sort-basis.js'
import { compare, type RatedSort } from '../sort-by.js'
import { tieOf } from '../weights.js'
import { openingQuestion } from './opening-question.js'
import { ruleToFind, type TitledColumn } from './rule-to-find.js'

export interface Question {
  readonly ask: string
  readonly answer?: string
}

export interface TalkTask {
  readonly rated: RatedSort
  readonly words: readonly SortableWord[]
  /** Words that could be laid, too, as hard as the list's, the most fitting first; read only as far as is needed. */
  readonly toAdd: () => Iterable<SortableWord>
}

/** More are a list to learn, not a question. */
const mostToPlace = 3
const mostCompared = 3

/** How it opens, the rule to find, where other words would go, the words that stand outside. */
export function sortTalk({ rated, words, toAdd }: TalkTask): readonly Question[] {
  const { family, of, sort } = rated
  const shared = family.kind === 'or none' ? sort.columns : sort.columns.slice(0, rated.keys.length)
  const compared = shared.slice(0, mostCompared).map(column => keyWordOf(wordsIn(column, words)))
  const opening = { ask: openingQuestion({ kind: family.kind, of, words: inARow(compared) }) }
  if (tieOf(family.kind).anyWords === true) return [opening]
  const rule = ruleToFind(family.kind, of, titledColumns(rated, words))
  return [opening, ...present([rule, wordsToPlace(rated, words, toAdd), oddOnes(sort.leftoverReasons)])]
}

function present<T>(values: readonly (T | undefined)[]): readonly T[] {
  return values.flatMap(value => (value === undefined ? [] : [value]))
}

function wordsIn(column: SortColumn, words: readonly SortableWord[]): readonly SortableWord[] {
  const own = new Set(column.words)
  return words.filter(({ text }) => own.has(text))
}

/** Those whose words share something; not the column of those that merely lack it. */
function titledColumns(
  { family, of, keys, sort }: RatedSort,
  words: readonly SortableWord[],
): readonly TitledColumn[] {
  return keys.map((key, index) => {
    const column = sort.columns[index]!
    const placed = wordsIn(column, words).flatMap(word => {
      const placement = family.placesOf(word).find(each => each.of === of && each.column === key)
      return placement === undefined ? [] : [{ word, placement }]
    })
    return { title: column.title, words: placed }
  })
}

/** One more word for each column, in the order of the alphabet, so that their order gives nothing away. */
function wordsToPlace(
  { family, of, keys, sort }: RatedSort,
  words: readonly SortableWord[],
  toAdd: () => Iterable<SortableWord>,
): Question | undefined {
  const own = new Set(words.map(({ text }) => text.toLowerCase()))
  const found = new Map<string, string>()
  for (const word of toAdd()) {
    if (found.size === Math.min(keys.length, mostToPlace)) break
    const columns = distinct(family.placesOf(word).flatMap(place => (place.of === of ? [place.column] : [])))
    const [key, another] = columns
    if (key === undefined || another !== undefined || !keys.includes(key)) continue
    if (!found.has(key) && !own.has(word.text.toLowerCase())) found.set(key, word.text)
  }
  if (found.size < 2) return undefined
  const placed = [...found].map(([key, word]) => ({ word, title: sort.columns[keys.indexOf(key)]!.title }))
  const ordered = placed.toSorted((a, b) => compare(a.word, b.word))
  return {
    ask: `Where would ${inARow(ordered.map(({ word }) => word))} go?`,
    answer: `${ordered.map(({ word, title }) => `${word} under ${title}`).join(', ')}.`,
  }
}

/** Words that break the rule are worth more talk than those that keep it; why they do stands with the leftovers. */
function oddOnes(reasons: readonly LeftoverReason[]): Question | undefined {
  const odd = reasons.flatMap(({ word, oddball }) => (oddball === true ? [word] : []))
  if (odd.length === 0) return undefined
  const asked = inARow(odd)
  return { ask: `Why ${odd.length === 1 ? `does ${asked} stand` : `do ${asked} stand`} outside?` }
}
