import { type Board, type BoardGrid, freeCell } from '../../../src/sets/bingo/board.js'
import type { WinRule } from '../../../src/sets/bingo/win-rule.js'

/**
 * When each board wins, by covering cell after cell and looking at the whole board after each call: written from the
 * rule as children play it, apart from the program's own counting.
 */
export function playedThrough(
  boards: readonly Board[],
  grid: BoardGrid,
  rule: WinRule,
  callOrder: readonly number[],
): readonly (number | undefined)[] {
  return boards.map(board => {
    const covered = board.map(row => row.map(word => word === null))
    for (const [index, called] of callOrder.entries()) {
      board.forEach((row, y) => {
        row.forEach((word, x) => {
          if (word === called) covered[y]![x] = true
        })
      })
      if (hasWon(covered, grid, rule)) return index + 1
    }
    return undefined
  })
}

function hasWon(covered: readonly (readonly boolean[])[], grid: BoardGrid, rule: WinRule): boolean {
  const { columns, rows } = grid
  if (rule === 'full board') return covered.every(row => row.every(Boolean))
  if (rule === 'corners')
    return [0, rows - 1].every(y => covered[y]![0] === true && covered[y]![columns - 1] === true)
  const lines = linesCovered(covered, grid)
  return rule === 'line' ? lines >= 1 : lines >= 2
}

/** A row or a column of the free space alone is no line; none is longer than the board has it. */
function linesCovered(covered: readonly (readonly boolean[])[], grid: BoardGrid): number {
  const { columns, rows } = grid
  const hasFree = freeCell(grid) !== null
  let lines = 0
  for (let y = 0; y < rows; y++) if (columns > (hasFree ? 1 : 0) && covered[y]!.every(Boolean)) lines++
  for (let x = 0; x < columns; x++) if (rows > 1 && covered.every(row => row[x])) lines++
  if (columns !== rows || columns < 2) return lines
  if (covered.every((row, index) => row[index])) lines++
  if (covered.every((row, index) => row[columns - 1 - index])) lines++
  return lines
}
