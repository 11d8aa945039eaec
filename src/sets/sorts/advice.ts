/** What would make a lop-sided sort a good one: words to add to thin columns, words to take out, each with its reason. */
import type { SortableWord } from '../../words/sortable-word.js'
import { inARow } from './in-a-row.js'
import type { SortAdvice } from './sort.js'
import type { RatedSort } from './sort-by.js'

export interface AdviceTask {
  readonly rated: RatedSort
  /** Words that could be added, as hard as the list's, the most fitting first; read only as far as is needed. */
  readonly toAdd: () => Iterable<SortableWord>
}

/** Fewer words in a column show no rule: common practice, no source. */
const fullColumn = 3
/** "Two or three words" are an easy change; more are another list. */
const mostToAdd = 3
const mostToTakeOut = 3

/** Undefined where nothing is to be mended. */
export function adviceOn({ rated, toAdd }: AdviceTask): SortAdvice | undefined {
  const { sort } = rated
  const outsiders = sort.leftoverReasons.filter(({ oddball }) => oddball !== true)
  const takeOut = outsiders.length <= mostToTakeOut ? outsiders : []
  const add = wordsToAdd(rated, toAdd)
  if (add.length === 0 && takeOut.length === 0) return undefined
  return { add, takeOut, says: [...add.map(addSentence), ...takeOut.map(takeOutSentence)].join(' ') }
}

type Addition = SortAdvice['add'][number]

function addSentence({ column, words }: Addition): string {
  return `Add ${inARow(words)} to ${column}.`
}

function takeOutSentence({ word, why }: SortAdvice['takeOut'][number]): string {
  return `Take ${word} out: it ${why}.`
}

/** Columns of two words, or of less than half as many as the fullest has. */
function wordsToAdd(
  { sort, keys, family, of }: RatedSort,
  toAdd: () => Iterable<SortableWord>,
): readonly Addition[] {
  const fullest = Math.max(...sort.columns.map(column => column.words.length))
  const thin = sort.columns.flatMap(({ title, words, without }, index) => {
    const key = keys[index]
    const wanted = Math.max(fullColumn, Math.ceil(fullest / 2)) - words.length
    return wanted > 0 && without !== true && key !== undefined
      ? [{ title, key, wanted: Math.min(mostToAdd, Math.max(2, wanted)), found: [] as string[] }]
      : []
  })
  if (thin.length === 0) return []
  for (const word of toAdd()) {
    if (thin.every(({ found, wanted }) => found.length === wanted)) break
    const own = new Set(family.placesOf(word).flatMap(place => (place.of === of ? [place.column] : [])))
    if (own.size !== 1) continue
    const column = thin.find(({ key, found, wanted }) => own.has(key) && found.length < wanted)
    column?.found.push(word.text)
  }
  return thin
    .filter(({ found }) => found.length > 1)
    .map(({ title, found }) => ({ column: title, words: found }))
}
