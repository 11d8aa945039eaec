/** What would make a sort of words that support none: company for a word that stands alone, or a column beside the only one. */
import type { SortableWord } from '../../words/sortable-word.js'
import { type Division, divisionsBy } from './divide.js'
import { inARow } from './in-a-row.js'
import { isClose, nearlySorts } from './nearly-sorts.js'
import { familiesFor, inAlphabet } from './rank-sorts.js'
import { type BasisFamily, distinct } from './sort-basis.js'
import { compare } from './sort-by.js'
import { tieOf } from './weights.js'

export interface WordsForASortTask {
  readonly words: readonly SortableWord[]
  /** Words that could be added, the most fitting first. */
  readonly toAdd: () => Iterable<SortableWord>
}

/** A column of fewer shows no rule: common practice, no source. */
const columnOfThree = 3

/** A sentence or two; undefined where the words share nothing that two or three more would make a sort of. */
export function wordsForASort({ words, toAdd }: WordsForASortTask): string | undefined {
  const list = inAlphabet(words)
  const [nearly] = nearlySorts({ words: list, best: 0, taken: [], toAdd })
  if (nearly !== undefined) return nearly.says
  const single = familiesFor(list)
    .filter(({ kind }) => isClose(kind))
    .flatMap(family => divisionsBy(family, list).map(division => ({ family, division })))
    .filter(({ division }) => isOneColumn(division, list.length))
    // The t of cat, hat and mat is spelled as ever: no week is about that.
    .filter(({ family, division }) => !isPlainLetter(family, division))
    .toSorted((a, b) => tieOf(b.family.kind).tie - tieOf(a.family.kind).tie)
  for (const { family, division } of single) {
    const said = columnBeside(family, division, list, toAdd)
    if (said !== undefined) return said
  }
  return undefined
}

/** All words but a stray one, and at least two. */
function isOneColumn({ columns, several }: Division, words: number): boolean {
  const [[, only] = [], ...others] = columns
  return (
    only !== undefined && others.length === 0 && several.size === 0 && only.length >= Math.max(2, words - 1)
  )
}

function isPlainLetter({ kind }: BasisFamily, { columns }: Division): boolean {
  return kind.startsWith('spellings of') && [...columns.keys()].every(key => /^[a-z](?:\||$)/.test(key))
}

/** Another column of the same basis: the first that is full of those with as many letters as the only one has, else the first. */
function columnBeside(
  { basisOf, placesOf }: BasisFamily,
  { of, columns }: Division,
  words: readonly SortableWord[],
  toAdd: () => Iterable<SortableWord>,
): string | undefined {
  const [[own, indices] = ['', []]] = columns
  const found = new Map<string, SortableWord[]>()
  let first: string | undefined
  for (const word of toAdd()) {
    const [key, another] = distinct(placesOf(word).flatMap(place => (place.of === of ? [place.column] : [])))
    if (key === undefined || key === own || another !== undefined) continue
    const column = found.get(key) ?? []
    if (column.length === columnOfThree) continue
    found.set(key, [...column, word])
    if (column.length + 1 < columnOfThree) continue
    first ??= key
    if (key.length !== own.length) continue
    first = key
    break
  }
  if (first === undefined) return undefined
  const basis = basisOf(of)
  const keys = new Set([own, first])
  const title = (key: string, column: readonly SortableWord[]) => basis.titleOf?.(key, column, keys) ?? key
  const added = found.get(first)!
  const ownTitle = title(
    own,
    indices.map(index => words[index]!),
  )
  const texts = inARow(added.map(({ text }) => text).toSorted(compare))
  return `Nearly a sort: ${basis.name}. All stand under ${ownTitle}; add ${texts}, which stand under ${title(first, added)}.`
}
