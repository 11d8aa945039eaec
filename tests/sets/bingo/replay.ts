/** Plays a game through: when does each board first have a line? */
import { type Board, type BoardGrid, linesOf } from '../../../src/sets/bingo/board.js'

/**
 * For each board the call (1, 2, …) at which its first line is full, or null where the calls end before that.
 * `callOrder`: the indices of the words called, each once.
 */
export function replay(
  boards: readonly Board[],
  grid: BoardGrid,
  callOrder: readonly number[],
): (number | null)[] {
  const lines = linesOf(grid)
  const calledAt = new Map(callOrder.map((word, index) => [word, index + 1]))
  return boards.map(board => {
    const cells = board.flat()
    const filledAt = lines.map(line =>
      Math.max(
        ...line.map(cell => {
          const word = cells[cell]
          return word === null || word === undefined ? 0 : (calledAt.get(word) ?? Infinity)
        }),
      ),
    )
    const first = Math.min(...filledAt)
    return Number.isFinite(first) ? first : null
  })
}
