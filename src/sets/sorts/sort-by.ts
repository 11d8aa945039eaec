/** A basis and how it divides the words → a sort: its columns, its leftovers with reasons, how good it is. */
import { isSaidInDifferentWays, type SortableWord } from '../../words/sortable-word.js'
import type { Division } from './divide.js'
import { type Rating, rate } from './rate.js'
import type { LeftoverReason, Sort, SortColumn } from './sort.js'
import type { BasisFamily, SortBasis } from './sort-basis.js'
import { weights } from './weights.js'

/** A sort with what is needed to compare it with others. */
export interface RatedSort {
  readonly sort: Sort
  readonly rating: Rating
  readonly basis: SortBasis
  readonly family: BasisFamily
  readonly of: string
  /** The key of each column, but that of a column of words without. */
  readonly keys: readonly string[]
  /** The column of each word by its index, -1 for leftovers. */
  readonly columnOf: Int16Array
  readonly oddballs: number
}

export interface SortTask {
  /** In the order of the alphabet. */
  readonly words: readonly SortableWord[]
  readonly family: BasisFamily
  readonly division: Division
  readonly isMarked: (basis: SortBasis, columns: readonly string[]) => boolean
  /** More words left over than this make no sort that is wanted: no reasons are looked for. */
  readonly mostLeft?: number
}

/** Undefined where there are no two columns. */
export function sortBy({ words, family, division, isMarked, mostLeft }: SortTask): RatedSort | undefined {
  const full = [...division.columns].filter(([, column]) => column.length > 1)
  if (full.length === 0) return undefined
  const basis = family.basisOf(division.of)
  if (full.length === 1 && basis.noneTitle === undefined) return undefined
  const kept = largest(full)
  const keys = new Set(kept.map(([key]) => key))
  const columnOf = new Int16Array(words.length).fill(-1)
  const unplaced = basis.noneTitle === undefined ? [] : withoutPlace(division, words.length)
  const hasNone = basis.noneTitle !== undefined && unplaced.length >= 3
  // One letter against none is a sort by having the pattern, which is another basis.
  if (kept.length < 2 && !(hasNone && family.kind === 'or none')) return undefined
  const titled = kept
    .map(([key, column]) => ({ key, column, title: titleOf(basis, { key, column, words, keys }) }))
    .toSorted((a, b) => byOrder(basis, a, b))
  const columns: readonly SortColumn[] = [
    ...titled.map(({ title, column }) => ({ title, words: column.map(index => words[index]!.text) })),
    ...(hasNone
      ? [
          {
            title: basis.noneTitle!,
            without: true as const,
            words: unplaced.map(index => words[index]!.text),
          },
        ]
      : []),
  ]
  for (const [place, { column }] of titled.entries()) for (const index of column) columnOf[index] = place
  if (hasNone) for (const index of unplaced) columnOf[index] = titled.length
  if (mostLeft !== undefined && countOf(columnOf, -1) > mostLeft) return undefined
  const reasons = leftoverReasons({ words, division, basis, keys, columnOf })
  const oddballs = reasons.filter(({ oddball }) => oddball).length
  const marked = isMarked(
    basis,
    titled.map(({ title }) => title),
  )
  const rating = rate({
    kind: family.kind,
    sizes: columns.map(column => column.words.length),
    hasWithout: hasNone,
    oddballs,
    outsiders: reasons.length - oddballs,
    isMarked: marked,
    isFeature: marked && basis.feature !== undefined,
  })
  const sort = {
    name: basis.name,
    basis: basis.basis,
    columns,
    leftovers: reasons.map(({ word }) => word),
    leftoverReasons: reasons,
    score: rating.score,
    why: explain(basis, columns, reasons.length),
    standing: rating.standing,
  }
  return {
    sort,
    rating,
    basis,
    family,
    of: division.of,
    keys: titled.map(({ key }) => key),
    columnOf,
    oddballs,
  }
}

function countOf(columnOf: Int16Array, wanted: number): number {
  let count = 0
  for (const column of columnOf) if (column === wanted) count += 1
  return count
}

type Column = readonly [key: string, column: readonly number[]]

function largest(columns: readonly Column[]): readonly Column[] {
  return columns
    .toSorted(([a, first], [b, second]) => second.length - first.length || compare(a, b))
    .slice(0, weights.mostColumns)
}

/** Words that fit no column of the basis at all. */
function withoutPlace({ columns, several }: Division, words: number): readonly number[] {
  const hasPlace = new Uint8Array(words)
  for (const column of columns.values()) for (const index of column) hasPlace[index] = 1
  for (const index of several.keys()) hasPlace[index] = 1
  const without: number[] = []
  for (let index = 0; index < words; index++) if (hasPlace[index] === 0) without.push(index)
  return without
}

interface Titled {
  readonly key: string
  readonly title: string
}

function titleOf(
  { titleOf: title }: SortBasis,
  {
    key,
    column,
    words,
    keys,
  }: {
    readonly key: string
    readonly column: readonly number[]
    readonly words: readonly SortableWord[]
    readonly keys: ReadonlySet<string>
  },
): string {
  return (
    title?.(
      key,
      column.map(index => words[index]!),
      keys,
    ) ?? key
  )
}

function byOrder({ order }: SortBasis, a: Titled, b: Titled): number {
  const rank = ({ key }: Titled) => {
    const place = order?.indexOf(key) ?? -1
    return place < 0 ? Number.MAX_SAFE_INTEGER : place
  }
  return rank(a) - rank(b) || compare(a.title, b.title)
}

export function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0
}

interface Leftovers {
  readonly words: readonly SortableWord[]
  readonly division: Division
  readonly basis: SortBasis
  readonly keys: ReadonlySet<string>
  readonly columnOf: Int16Array
}

function leftoverReasons({ words, division, basis, keys, columnOf }: Leftovers): readonly LeftoverReason[] {
  const own = new Map(
    [...division.columns].flatMap(([key, column]) => column.map(index => [index, key] as const)),
  )
  const shown = (key: string, word: SortableWord) =>
    basis.titleOf?.(key, [word], new Set([...keys, key])) ?? key
  return words.flatMap((word, index): readonly LeftoverReason[] => {
    if (columnOf[index]! >= 0) return []
    const told = (why: string, isOddball: boolean): readonly LeftoverReason[] => [
      {
        word: word.text,
        why: `${why}${saidOtherwise(word)}`,
        ...(isOddball ? { oddball: true as const } : {}),
      },
    ]
    const several = division.several.get(index)
    if (several !== undefined)
      return told(`fits more than one column: ${several.map(key => shown(key, word)).join(', ')}`, true)
    const oddball = basis.oddball?.(word, keys)
    if (oddball !== undefined) return told(oddball, true)
    const key = own.get(index)
    if (key === undefined) return told(basis.noneBecause(word), false)
    const isAlone = division.columns.get(key)!.length === 1
    const why = isAlone ? 'is the only one of its kind' : 'would make one column too many'
    return told(`${why}: ${shown(key, word)}`, isAlone && basis.loneIsOddball === true)
  })
}

/** tear, read, wind: another way of saying it may have its column. */
function saidOtherwise(word: SortableWord): string {
  return isSaidInDifferentWays(word) ? ' (said in another way, it may have a column)' : ''
}

/** For a teacher: what the columns are and how full, and whether every word has a place. */
function explain(basis: SortBasis, columns: readonly SortColumn[], left: number): string {
  const counts = columns.map(({ title, words }, index) =>
    index === 0 ? `${title} (${words.length} words)` : `${title} (${words.length})`,
  )
  const rest =
    left === 0
      ? 'Every word has its column.'
      : left === 1
        ? '1 word is left over.'
        : `${left} words are left over.`
  const thin = columns.some(column => column.words.length < 3) ? ' Two words are few to show a rule.' : ''
  return `By ${basis.basis}: ${counts.join(', ')}. ${rest}${thin}`
}
