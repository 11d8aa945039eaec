/** The calls of pattern bingo: which lines win, when each board can have one, and in which order the kinds are called. */
import type { ColumnsAndRows } from '../../geometry.js'
import type { Word } from '../../words/word.js'
import { linesOf } from '../bingo/board.js'
import { type Generator, shuffle } from '../random.js'
import type { Kind, Share } from './pattern-shares.js'

/** A line of two is full before the game has begun: on small boards the longer ones alone win. */
export function winningLines(grid: ColumnsAndRows): readonly (readonly number[])[] {
  const lines = linesOf({ ...grid, freeCentre: false })
  const longest = Math.max(...lines.map(({ length }) => length))
  return lines.filter(({ length }) => length >= Math.min(3, longest))
}

/** How many words of each kind a line waits for. */
export function needOf(
  line: readonly number[],
  cells: readonly (Word | null)[],
  kinds: readonly Kind[],
): readonly number[] {
  return kinds.map(
    ({ words }) => line.filter(cell => cells[cell] !== null && words.includes(cells[cell]!)).length,
  )
}

/** For each board the call by which it can have a line at the earliest: a child covers one word a call, and may choose. */
export function winsOf(
  needs: readonly (readonly (readonly number[])[])[],
  calls: readonly number[],
): readonly number[] {
  const callsOf: number[][] = needs[0]![0]!.map(() => [])
  for (const [index, kind] of calls.entries()) callsOf[kind]!.push(index + 1)
  return needs.map(lines => {
    let first = Number.POSITIVE_INFINITY
    for (const line of lines) {
      let full = 0
      for (const [kind, count] of line.entries())
        if (count > 0) full = Math.max(full, callsOf[kind]![count - 1]!)
      first = Math.min(first, full)
    }
    return first
  })
}

const TRIES = 400

/** Each kind as often as a board can answer it; one board alone first, and as late as can be found. */
export function orderOfCalls(
  { kinds }: Share,
  needs: readonly (readonly (readonly number[])[])[],
  generator: Generator,
): readonly number[] {
  const all = kinds.flatMap(({ each }, kind) => Array.from({ length: each }, () => kind))
  let best = shuffle(all, generator)
  let bestWorth = Number.NEGATIVE_INFINITY
  for (let tries = 0; tries < TRIES; tries++) {
    const calls = tries === 0 ? best : shuffle(all, generator)
    const wins = winsOf(needs, calls)
    const first = Math.min(...wins)
    const winners = wins.filter(call => call === first).length
    const worth = first - (winners - 1) * all.length
    if (worth > bestWorth) [best, bestWorth] = [calls, worth]
  }
  return best
}
