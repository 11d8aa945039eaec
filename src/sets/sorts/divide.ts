/** One pass over the words for each family of bases: which words stand in which columns of which basis. */
import type { SortableWord } from '../../words/sortable-word.js'
import type { BasisFamily } from './sort-basis.js'

/** How one basis divides the words; words by their index in the list. */
export interface Division {
  readonly of: string
  /** Words that fit one column only, by the column's key. */
  readonly columns: ReadonlyMap<string, readonly number[]>
  /** The keys of words that fit more than one. */
  readonly several: ReadonlyMap<number, readonly string[]>
}

/** @param only the bases that are asked for, where not all are */
export function divisionsBy(
  { placesOf }: BasisFamily,
  words: readonly SortableWord[],
  only?: ReadonlySet<string>,
): readonly Division[] {
  const found = new Map<string, BeingFilled>()
  for (const [index, word] of words.entries()) {
    for (const { of, column } of placesOf(word)) {
      if (only !== undefined && !only.has(of)) continue
      let division = found.get(of)
      if (division === undefined) {
        division = new BeingFilled(of)
        found.set(of, division)
      }
      division.put(index, column)
    }
  }
  return [...found.values()]
}

class BeingFilled implements Division {
  readonly columns = new Map<string, number[]>()
  readonly several = new Map<number, string[]>()
  #last = -1
  #lastKey = ''

  constructor(readonly of: string) {}

  /** Words come in order: one that comes again with another key fits more than one column, and stands in none. */
  put(index: number, key: string): void {
    if (index !== this.#last) {
      this.#last = index
      this.#lastKey = key
      const column = this.columns.get(key)
      if (column === undefined) this.columns.set(key, [index])
      else column.push(index)
      return
    }
    const several = this.several.get(index)
    if (several !== undefined) {
      if (!several.includes(key)) several.push(key)
    } else if (key !== this.#lastKey) {
      this.several.set(index, [this.#lastKey, key])
      const column = this.columns.get(this.#lastKey)!
      column.pop()
      if (column.length === 0) this.columns.delete(this.#lastKey)
    }
  }
}
