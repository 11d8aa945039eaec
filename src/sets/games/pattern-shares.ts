/** How many words of each kind stand on a board of pattern bingo, and on what grid. */
import type { ColumnsAndRows } from '../../geometry.js'
import { errorAt, type Place, type Problem } from '../../problems.js'
import type { Word } from '../../words/word.js'

export interface Kind {
  /** What is called. */
  readonly title: string
  readonly words: readonly Word[]
}

export interface PatternBingoWanted {
  /** No word in two of them. */
  readonly kinds: readonly Kind[]
  /** The largest that the words fill where left out. */
  readonly grid?: ColumnsAndRows | undefined
  /** How many words of each kind a board has; as many as fill it where left out, of all kinds nearly as many. */
  readonly answers?: number | undefined
  readonly boards: number
  readonly copies: number
  readonly seed: number
  readonly label: string
  readonly place: Place
}

/** What stands on every board. */
export interface Share {
  readonly grid: ColumnsAndRows
  /** The kinds that are called, each with how many of its words a board has. */
  readonly kinds: readonly (Kind & { readonly each: number })[]
  readonly free: number
}

const GRIDS: readonly ColumnsAndRows[] = [
  { columns: 5, rows: 5 },
  { columns: 4, rows: 4 },
  { columns: 3, rows: 3 },
  { columns: 3, rows: 2 },
  { columns: 2, rows: 2 },
]
/** Of the words, on each board: so that boards differ, as bingo's do. */
const SHARE_ON_BOARD = 0.8

/** The largest grid that is full but for its middle, a fifth of the words staying off it where a smaller one can be had. */
export function bestShare(wanted: PatternBingoWanted): Share | undefined {
  if (wanted.grid !== undefined) return shareOn(wanted.grid, wanted)
  const all = GRIDS.map(grid => shareOn(grid, wanted)).filter(share => share !== undefined)
  const full = all.filter(({ grid, free }) => free <= (grid.columns * grid.rows) % 2)
  const differing = full.filter(({ kinds }) => {
    const dealt = kinds.reduce((sum, { each }) => sum + each, 0)
    const words = kinds.reduce((sum, kind) => sum + kind.words.length, 0)
    return dealt <= words * SHARE_ON_BOARD
  })
  return differing[0] ?? full[0] ?? all.at(-1)
}

/** Undefined where there are not two kinds to call. */
function shareOn(grid: ColumnsAndRows, { kinds, answers }: PatternBingoWanted): Share | undefined {
  const cells = grid.columns * grid.rows
  const enough = kinds.filter(({ words }) => words.length >= (answers ?? 1))
  const most = Math.floor(cells / (answers ?? 1))
  const largest = enough.toSorted((a, b) => b.words.length - a.words.length).slice(0, most)
  if (largest.length < 2) return undefined
  const each = new Map(largest.map(kind => [kind, answers ?? 1]))
  const dealt = () => [...each.values()].reduce((sum, count) => sum + count, 0)
  // The middle of an odd grid is free, as on other boards.
  while (answers === undefined && dealt() < cells - (grid.columns % 2) * (grid.rows % 2)) {
    const growing = largest.filter(kind => each.get(kind)! < kind.words.length)
    if (growing.length === 0) break
    const next = growing.reduce((least, kind) => (each.get(kind)! < each.get(least)! ? kind : least))
    each.set(next, each.get(next)! + 1)
  }
  const used = kinds.flatMap(kind => {
    const count = each.get(kind)
    return count === undefined ? [] : [{ ...kind, each: count }]
  })
  return { grid, kinds: used, free: cells - dealt() }
}

export function tooFewKinds({ kinds, answers, grid, place }: PatternBingoWanted): Problem {
  if (answers === undefined || kinds.length < 2)
    return errorAt(
      place,
      `the words make ${kinds.length === 0 ? 'no kind' : 'one kind'} to call, and a game needs two`,
      'Name another sort, or give more words.',
    )
  const second = kinds.map(({ words }) => words.length).toSorted((a, b) => b - a)[1]!
  const cells = grid === undefined ? second * 2 : grid.columns * grid.rows
  return errorAt(
    place,
    `no board has ${answers} words of each of two kinds`,
    `Write answers: ${Math.max(1, Math.min(second, Math.floor(cells / 2)))} or less, or give more words${grid === undefined ? '' : ' or a larger grid'}.`,
  )
}
