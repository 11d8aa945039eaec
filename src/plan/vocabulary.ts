/** The names a plan may use. The pipeline fills it in from the later stages, so that the plan stage need not know them. */
import type { OptionReaders } from './values/options.js'
import type { NamedPaper } from './values/papers.js'

export interface Vocabulary {
  readonly layouts: ReadonlyMap<string, LayoutVocabulary>
  readonly patterns: readonly string[]
  readonly papers: readonly NamedPaper[]
  readonly fonts: readonly string[]
  readonly lines: readonly string[]
  /** Lines around a card; `none` is always known. */
  readonly borders: readonly string[]
  readonly outlines: readonly string[]
  /** Rules for plurals, as a mark names them. */
  readonly plurals: readonly string[]
}

export interface LayoutVocabulary {
  /** The layout's own keys, each spelled as the layout is given it. */
  readonly options: OptionReaders
}
