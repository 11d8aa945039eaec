/** Sorts words by one basis, and says how good a sort it makes. */
import type { Word } from '../../words/word.js'
import type { Sort, SortColumn } from './sort.js'
import type { SortBasis } from './sort-basis.js'

/** More columns than this are hard to keep apart on a child's desk: common practice, no source. */
const mostColumns = 5

export function sortBy(basis: SortBasis, words: readonly Word[]): Sort {
  const fits = words.map((word): Fit => {
    const titles = basis.titlesFor(word)
    return { word: word.text, titles, noneBecause: titles.length === 0 ? basis.noneBecause(word) : '' }
  })
  const unplaced = fits.filter(fit => fit.titles.length === 0)
  const ownColumn = basis.noneTitle !== undefined && unplaced.length >= 3
  const titled = fits.map(fit =>
    ownColumn && fit.titles.length === 0 ? { ...fit, titles: [basis.noneTitle!] } : fit,
  )
  const columns = chooseColumns(basis, titled)
  const placed = new Set(columns.flatMap(column => column.words))
  const left = titled.filter(fit => !placed.has(fit.word))
  const score = rate(basis, columns, words.length)
  return {
    name: basis.name,
    basis: basis.basis,
    columns,
    leftovers: left.map(fit => fit.word),
    leftoverReasons: left.map(fit => ({ word: fit.word, why: reasonFor(fit, titled) })),
    score,
    why: explain(basis, columns, left.length),
  }
}

/**
 * At least two columns of two words, at most a third of the list left over, at most two thirds of it in a column of
 * words that lack the pattern, and a score of a third or more, which lopsided columns do not reach.
 */
export function isDefensible({ columns, leftovers, score }: Sort, words: number): boolean {
  const without = columns.find(column => column.without)?.words.length ?? 0
  return columns.length > 1 && 3 * leftovers.length <= words && 3 * without <= 2 * words && 3 * score >= 1
}

interface Fit {
  readonly word: string
  readonly titles: readonly string[]
  /** Why it has no titles. */
  readonly noneBecause: string
}

/** Columns of two words or more, the largest where there are too many, in the basis's order or the list's. */
function chooseColumns(basis: SortBasis, fits: readonly Fit[]): readonly SortColumn[] {
  const sole = fits.filter(fit => fit.titles.length === 1)
  const titles = [...new Set(sole.map(fit => fit.titles[0]!))]
  const columns = titles
    .map(
      (title): SortColumn => ({
        title,
        words: sole.filter(fit => fit.titles[0] === title).map(fit => fit.word),
        ...(title === basis.noneTitle ? { without: true } : {}),
      }),
    )
    .filter(column => column.words.length > 1)
  const largest = [...columns].sort((a, b) => b.words.length - a.words.length).slice(0, mostColumns)
  const rank = (title: string): number => {
    if (title === basis.noneTitle) return Number.MAX_SAFE_INTEGER
    return (basis.order ?? titles).indexOf(title)
  }
  return largest.sort((a, b) => rank(a.title) - rank(b.title))
}

/**
 * Our own yardstick, no source: the share of words placed (squared, for leftovers weigh heavily), times how evenly
 * they fill the columns (Simpson's index against that of equal columns), times the share of columns with three words
 * or more (a column of two shows a rule poorly), times how sharp the contrast is. A column of what has no such
 * pattern costs a tenth, since its words have nothing in common.
 */
function rate(basis: SortBasis, columns: readonly SortColumn[], words: number): number {
  const sizes = columns.map(column => column.words.length)
  const placed = sizes.reduce((sum, size) => sum + size, 0)
  if (columns.length < 2) return 0
  const together = sizes.reduce((sum, size) => sum + (size / placed) ** 2, 0)
  const evenness = (1 - together) / (1 - 1 / columns.length)
  const full = sizes.filter(size => size >= 3).length / columns.length
  const contrast = columns.some(column => column.without) ? 0.9 : 1
  const score = (placed / words) ** 2 * evenness * (0.7 + 0.3 * full) * contrast * basis.sharpness
  return Math.round(1000 * score) / 1000
}

/** In one clause, of which the word is the subject. */
function reasonFor({ titles, noneBecause }: Fit, all: readonly Fit[]): string {
  const [only, another] = titles
  if (only === undefined) return noneBecause
  if (another !== undefined) return `fits more than one column: ${titles.join(', ')}`
  const alike = all.filter(fit => fit.titles.length === 1 && fit.titles[0] === only)
  return alike.length === 1
    ? `is the only one of its kind: ${only}`
    : `would make one column too many: ${only}`
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
