/**
 * Duplex arithmetic on a portrait sheet of R rows and C columns: a long-edge flip sends (row, column) to
 * (row, C − 1 − column); a short-edge flip sends it to (R − 1 − row, column), turned 180°. Computed from the turn of
 * a sheet about an axis in its plane.
 *
 * What the edges mean: IPP's `two-sided-long-edge` and `two-sided-short-edge` put each pair of pages on a sheet so
 * that both read right way up as if bound on that edge of the paper (RFC 8011, `sides`; number of the section, 5.2.8,
 * from memory). So on a landscape sheet the two change parts. Registration of backs ±1 mm: common practice, no source.
 */
import { describe, expect, it } from 'vitest'
import { imposeBacks } from '../../src/sheets/backs.js'
import { divideSheet, type Grid, placesOf } from '../../src/sheets/grid.js'
import { imposeFronts } from '../../src/sheets/impose.js'
import type { Sheet } from '../../src/sheets/sheet.js'
import { paperNamed } from '../sheets/paper-named.js'
import { samplePieces, somewhere } from '../sheets/sample-pieces.js'

const grid = gridOf('portrait')
const fronts = frontsOn(grid)

describe('backs on a portrait sheet', () => {
  it('go to (row, C − 1 − column), upright, for a long-edge flip', () => {
    const [back] = imposeBacks({ fronts, backOf: front => front, flip: 'long edge', title: 'cards' })
    for (const placed of back!.pieces) {
      const front = rowAndColumn(fronts[0]!, placed.piece.id)
      expect(rowAndColumn(back!, placed.piece.id)).toEqual([front[0], grid.columns - 1 - front[1]])
      expect(placed.turn).toBe(0)
    }
  })

  it('go to (R − 1 − row, column), turned 180°, for a short-edge flip', () => {
    const [back] = imposeBacks({ fronts, backOf: front => front, flip: 'short edge', title: 'cards' })
    for (const placed of back!.pieces) {
      const front = rowAndColumn(fronts[0]!, placed.piece.id)
      expect(rowAndColumn(back!, placed.piece.id)).toEqual([grid.rows - 1 - front[0], front[1]])
      expect(placed.turn).toBe(180)
    }
  })
})

describe('backs on a landscape sheet', () => {
  const landscape = gridOf('landscape')
  const fronts = frontsOn(landscape)

  it.each([
    ['short edge', 'columns', 0],
    ['long edge', 'rows', 180],
  ] as const)('for a %s flip have their %s reversed and are turned by %d°', (flip, reversed, turn) => {
    const [back] = imposeBacks({ fronts, backOf: front => front, flip, title: 'cards' })
    for (const placed of back!.pieces) {
      const [row, column] = rowAndColumn(fronts[0]!, placed.piece.id, landscape)
      const expected =
        reversed === 'rows' ? [landscape.rows - 1 - row, column] : [row, landscape.columns - 1 - column]
      expect(rowAndColumn(back!, placed.piece.id, landscape)).toEqual(expected)
      expect(placed.turn).toBe(turn)
    }
  })
})

function rowAndColumn(sheet: Sheet, id: string, on: Grid = grid): readonly [number, number] {
  const placed = sheet.pieces.find(({ piece }) => piece.id === id)!
  return [
    countSteps((placed.yMm - on.originYMm) / (on.pieceSize.heightMm + on.gapMm)),
    countSteps((placed.xMm - on.originXMm) / (on.pieceSize.widthMm + on.gapMm)),
  ]
}

/** Whole steps of the grid; anything between two steps would show as a fraction. */
function countSteps(steps: number): number {
  return Number(Math.abs(steps).toFixed(4))
}

function frontsOn(on: Grid): readonly Sheet[] {
  const pieces = samplePieces(placesOf(on), 1, on.pieceSize)
  return imposeFronts({ pieces, grid: on, order: 'rows', cut: 'lines', title: 'cards' })
}

function gridOf(orientation: 'portrait' | 'landscape'): Grid {
  const outcome = divideSheet({
    paper: paperNamed('letter')!,
    orientation,
    gapMm: 0,
    division: { kind: 'count', across: 3, down: 4 },
    preferred: { columns: 3, rows: 4 },
    place: somewhere,
  })
  if (!outcome.ok) throw new Error('the grid does not fit')
  return outcome.value
}
