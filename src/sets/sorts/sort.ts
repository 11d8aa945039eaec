/** A way to sort a list of words into columns. */
export interface Sort {
  /** What it is called on paper and in a plan, e.g. `which consonant digraph`. */
  readonly name: string
  /** What the columns differ by, as the end of a sentence: `which consonant digraph the word has`. */
  readonly basis: string
  readonly columns: readonly SortColumn[]
  /** Words that stand in no column, in the order of the list. */
  readonly leftovers: readonly string[]
  /** For each leftover, why it stands in no column. */
  readonly leftoverReasons: readonly LeftoverReason[]
  /** 0 to 1, to three decimals; only for ranking the sorts of one list. */
  readonly score: number
  /** Why it ranks where it does, in a plain sentence or two. */
  readonly why: string
}

export interface SortColumn {
  readonly title: string
  /** Set where the column's words share only that they lack what the others have. */
  readonly without?: true
  /** In the order of the list. */
  readonly words: readonly string[]
}

export interface LeftoverReason {
  readonly word: string
  readonly why: string
}
