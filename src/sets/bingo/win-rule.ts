/** What wins a game, as goals of cells that a board has to fill. */
import { type BoardGrid, freeCell, linesOf } from './board.js'

/** Common practice, no source. */
export const winRules = ['line', 'two lines', 'corners', 'full board'] as const

export type WinRule = (typeof winRules)[number]

/** The cells of each goal, counted row by row from 0, and how many goals of a board must be full. */
export interface Goals {
  readonly goals: readonly (readonly number[])[]
  readonly needed: number
}

/** A grid of one row or column has two corners only; a board with a single line cannot have two. */
export function goalsOf(rule: WinRule, grid: BoardGrid): Goals {
  const lines = linesOf(grid)
  switch (rule) {
    case 'line':
      return { goals: lines, needed: 1 }
    case 'two lines':
      return { goals: lines, needed: Math.min(2, lines.length) }
    case 'corners':
      return { goals: [cornersOf(grid)], needed: 1 }
    case 'full board':
      return { goals: [cellsOf(grid)], needed: 1 }
  }
}

function cornersOf({ columns, rows }: BoardGrid): readonly number[] {
  return [...new Set([0, columns - 1, columns * (rows - 1), columns * rows - 1])]
}

function cellsOf(grid: BoardGrid): readonly number[] {
  const free = freeCell(grid)
  return Array.from({ length: grid.columns * grid.rows }, (_, cell) => cell).filter(cell => cell !== free)
}
