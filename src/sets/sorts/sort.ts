/** A way to sort a list of words into columns. Whatever the order of the list, it is the same to the letter. */
export interface Sort {
  /** What it is called on paper and in a plan, e.g. `which consonant digraph`. */
  readonly name: string
  /** What the columns differ by, as the end of a sentence: `which consonant digraph the word has`. */
  readonly basis: string
  readonly columns: readonly SortColumn[]
  /** Words that stand in no column, in the order of the alphabet. */
  readonly leftovers: readonly string[]
  /** For each leftover, why it stands in no column. */
  readonly leftoverReasons: readonly LeftoverReason[]
  /** 0 to 1, to three decimals; only for ranking the sorts of one list. */
  readonly score: number
  /** What its columns are and how full, in a plain sentence or two. */
  readonly why: string
  /** How its score came about, in one line: each factor of the formula (weights.ts) with its figure. */
  readonly standing: string
  /** What would make a lop-sided sort a good one; only where the caller asks for it. */
  readonly advice?: SortAdvice
  /** Of the first sort alone, and only where the caller asks for it: what these words would rather be sorted by. */
  readonly nearly?: NearlySort
}

/** What would be a sort, and a better one than there is, if a word that stands alone had company. */
export interface NearlySort {
  readonly name: string
  readonly add: readonly {
    readonly column: string
    readonly has: string
    readonly words: readonly string[]
  }[]
  /** The same in a sentence or two. */
  readonly says: string
}

export interface SortColumn {
  readonly title: string
  /** Set where the column's words share only that they lack what the others have. */
  readonly without?: true
  /** In the order of the alphabet. */
  readonly words: readonly string[]
}

export interface LeftoverReason {
  readonly word: string
  readonly why: string
  /** It has the sound or the letters that the sort is about, and breaks its rule: worth talking over, not a mistake. */
  readonly oddball?: true
}

export interface SortAdvice {
  /** Words that would fill thin columns, as hard as those of the list. */
  readonly add: readonly { readonly column: string; readonly words: readonly string[] }[]
  /** Words that spoil the sort, being no part of what it is about. */
  readonly takeOut: readonly LeftoverReason[]
  /** The same in a sentence or two. */
  readonly says: string
}
