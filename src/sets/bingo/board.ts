/** A board's grid and its lines. */
import type { ColumnsAndRows } from '../../geometry.js'

export interface BoardGrid extends ColumnsAndRows {
  /** A free space in the middle; only a grid of odd sides both ways has a middle cell, others go without. */
  readonly freeCentre: boolean
}

/** Rows of cells; a cell is the index of a word, or null for the free space. */
export type Board = readonly (readonly (number | null)[])[]

/** The middle cell, counted row by row from 0, or null where the grid has none or it holds a word. */
export function freeCell(grid: BoardGrid): number | null {
  const hasMiddle = grid.columns % 2 === 1 && grid.rows % 2 === 1
  return grid.freeCentre && hasMiddle ? (grid.columns * grid.rows - 1) / 2 : null
}

/** How many words a board holds. */
export function wordsPerBoard(grid: BoardGrid): number {
  return grid.columns * grid.rows - (freeCell(grid) === null ? 0 : 1)
}

/**
 * The lines that win, each the cells it runs through, counted row by row from 0: every row, every column and, on a
 * square grid, both diagonals (common practice, no source). No line twice, and a line of the free space alone is
 * none.
 */
export function linesOf(grid: BoardGrid): readonly (readonly number[])[] {
  const { columns, rows } = grid
  const across = range(rows).map(row => range(columns).map(column => row * columns + column))
  const down = range(columns).map(column => range(rows).map(row => row * columns + column))
  const diagonals =
    columns === rows
      ? [
          range(rows).map(row => row * columns + row),
          range(rows).map(row => row * columns + (columns - 1 - row)),
        ]
      : []
  const free = freeCell(grid)
  const distinct = new Map([...across, ...down, ...diagonals].map(line => [line.join(), line]))
  return [...distinct.values()].filter(line => line.some(cell => cell !== free))
}

function range(length: number): number[] {
  return Array.from({ length }, (_, index) => index)
}
