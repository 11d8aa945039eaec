import type { ColumnsAndRows } from '../../src/geometry.js'

/** Grids with fewer and larger cells, the least change first, none with fewer columns or rows than `least`. */
export function smallerGrids(now: ColumnsAndRows, least: number): readonly ColumnsAndRows[] {
  const sides = [8, 7, 6, 5, 4, 3, 2].filter(side => side >= least && side < Math.max(now.columns, now.rows))
  return sides.map(side => ({ columns: Math.min(side, now.columns), rows: Math.min(side, now.rows) }))
}
