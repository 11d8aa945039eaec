/** The names a plan may use. The pipeline fills it in from the later stages, so that the plan stage need not know them. */

import type { FileAccess } from './disk/file-access.js'
import type { Paper } from './plan.js'
import type { OptionReaders } from './values/options.js'
import type { WeekPlace } from './week/week-place.js'

export interface Vocabulary {
  readonly layouts: ReadonlyMap<string, LayoutVocabulary>
  readonly patterns: readonly string[]
  readonly papers: readonly NamedPaper[]
  readonly fonts: readonly string[]
  /** Why the font in that file cannot be used, a clause; undefined where it can. */
  readonly faultOfFont: (path: string, files: FileAccess) => string | undefined
  readonly lines: readonly string[]
  /** Lines around a card; `none` is always known. */
  readonly borders: readonly string[]
  readonly outlines: readonly string[]
  /** Rules for plurals, as a mark names them. */
  readonly plurals: readonly string[]
  /** Every key of a plan, folded, with a sentence that says where it stands. */
  readonly keysElsewhere: () => ReadonlyMap<string, string>
  /** What the trade calls what a plan names otherwise, folded, with what to write instead: by kind (`pattern`). */
  readonly tradeWords: (kind: string) => ReadonlyMap<string, string>
}

export interface LayoutVocabulary {
  /** The layout's own keys, each spelled as the layout is given it. */
  readonly options: OptionReaders
  /** What it is made for, where an item names no paper; the plan's own where left out. */
  readonly paper?: Paper
  readonly inWeek: WeekPlace
}

/** A paper that a plan may name, and what else teachers call it: `3x5 card`, `US Letter`. */
export interface NamedPaper extends Paper {
  readonly aliases?: readonly string[]
}
