/** Which grid the boards of a game have. */
import type { ColumnsAndRows } from '../../src/geometry.js'
import { type Problem, warningAt } from '../../src/problems.js'
import type { LayoutRequest } from '../layout.js'

/** Words that a board of this grid takes. */
export function cellsOf({ columns, rows }: ColumnsAndRows, free: boolean): number {
  return columns * rows - (free && columns % 2 === 1 && rows % 2 === 1 ? 1 : 0)
}

/** A group with fewer words than the class plays on smaller boards; undefined where not even four cells can be filled. */
export function largestGrid(words: number, free: boolean): ColumnsAndRows | undefined {
  const squares = [8, 7, 6, 5, 4, 3, 2].map(side => ({ columns: side, rows: side }))
  return squares.find(grid => cellsOf(grid, free) <= words)
}

export function smallerGrid(
  { item, group, words }: LayoutRequest,
  asked: ColumnsAndRows,
  grid: ColumnsAndRows,
): Problem {
  const named = ({ columns, rows }: ColumnsAndRows) => `${columns}x${rows}`
  return warningAt(
    item.place,
    `${group!.name} has ${words.length} words, too few for ${named(asked)}: its boards are ${named(grid)}`,
    'Give the group more words, or leave it out with groups.',
  )
}

/** The largest square grid for which a fifth of the words stay off each board, so that boards differ well. */
export function usualGrid(words: number): ColumnsAndRows {
  const side = [5, 4, 3].find(size => size * size <= words * 0.8 + (size % 2)) ?? 3
  return { columns: side, rows: side }
}
