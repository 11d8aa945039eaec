/** An order of cards that gives no sort away to children who see them before they have sorted them. */
import type { Word } from '../../words/word.js'
import { type Generator, generatorFor, shuffle } from '../random.js'
import type { Sort } from './sort.js'

export interface OrderWanted {
  readonly words: readonly Word[]
  /** The best first, as `rankSorts` gives them. */
  readonly sorts: readonly Sort[]
  readonly seed: number
  readonly label: string
}

/** Sorts further down the ranking are too weak for an order to give away. */
const sortsWatched = 5

/** The same words, in a seeded order with as few hints as a short search finds; `hintsIn` counts them. */
export function orderWithoutHints({ words, sorts, seed, label }: OrderWanted): readonly Word[] {
  const generator = generatorFor(seed, `${label}: order`)
  const watched = watchedColumns(sorts)
  let best = shuffle(words, generator)
  let fewest = hintsAmong(best, watched)
  for (let start = 0; start < 12 && fewest > 0; start++) {
    const { order, hints } = improve(shuffle(words, generator), watched, generator)
    if (hints < fewest) [best, fewest] = [order, hints]
  }
  return best
}

/**
 * How much an order gives away: in each watched sort the cards past the longest run that a column is allowed, and
 * every fifth and further card of two columns taking turns; every fourth and further word in alphabetical order, up
 * or down. Pairs of neighbours are no hint: an order without any would itself be one.
 */
export function hintsIn(order: readonly Word[], sorts: readonly Sort[]): number {
  return hintsAmong(order, watchedColumns(sorts))
}

/** What a sort says of an order: the column of each word, and how many words each column has. */
interface WatchedSort {
  readonly columnOf: ReadonlyMap<string, number>
  readonly sizes: readonly number[]
}

function watchedColumns(sorts: readonly Sort[]): readonly WatchedSort[] {
  return sorts.slice(0, sortsWatched).map(({ columns }) => ({
    columnOf: new Map(columns.flatMap(({ words }, index) => words.map(text => [text, index] as const))),
    sizes: columns.map(({ words }) => words.length),
  }))
}

function hintsAmong(order: readonly Word[], watched: readonly WatchedSort[]): number {
  const texts = order.map(word => word.text)
  const alphabet = texts.map(text => text.toLowerCase())
  const inSorts = watched.map(({ columnOf, sizes }) => {
    const columns = texts.map(text => columnOf.get(text) ?? -1)
    const allowed = sizes.map(size => allowedRun(size, texts.length))
    const same = (index: number): boolean => columns[index]! >= 0 && columns[index] === columns[index - 1]
    const turns = (index: number): boolean =>
      index < 2 || (columns[index] === columns[index - 2] && columns[index] !== columns[index - 1])
    return (
      2 * beyond(texts.length, index => allowed[columns[index]!] ?? 1, same) +
      beyond(texts.length, () => 4, turns)
    )
  })
  const rising = beyond(
    texts.length,
    () => 3,
    index => alphabet[index]! > alphabet[index - 1]!,
  )
  const falling = beyond(
    texts.length,
    () => 3,
    index => alphabet[index]! < alphabet[index - 1]!,
  )
  return inSorts.reduce((sum, hints) => sum + hints, 0) + rising + falling
}

/** Two side by side; more for a column of more than half the cards, which cannot but lie in runs. */
function allowedRun(column: number, cards: number): number {
  const unavoidable = Math.ceil(column / (cards - column + 1))
  return 2 * column > cards ? Math.max(2, unavoidable) + 1 : 2
}

/** How many cards stand in runs beyond what is allowed there; `continues` tells whether a card goes on with its run. */
function beyond(
  cards: number,
  allowed: (index: number) => number,
  continues: (index: number) => boolean,
): number {
  let run = 1
  let count = 0
  for (let index = 1; index < cards; index++) {
    run = continues(index) ? run + 1 : 1
    if (run > allowed(index)) count++
  }
  return count
}

function improve(
  start: readonly Word[],
  watched: readonly WatchedSort[],
  generator: Generator,
): { order: Word[]; hints: number } {
  let order = [...start]
  let hints = hintsAmong(order, watched)
  for (let step = 0; step < 30 * order.length && hints > 0; step++) {
    const [a, b] = [generator.below(order.length), generator.below(order.length)]
    const changed = [...order]
    changed[a] = order[b]!
    changed[b] = order[a]!
    const changedHints = hintsAmong(changed, watched)
    if (changedHints <= hints) [order, hints] = [changed, changedHints]
  }
  return { order, hints }
}
