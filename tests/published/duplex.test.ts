/**
 * Duplex arithmetic on a portrait sheet of R rows and C columns: a long-edge flip sends (row, column) to
 * (row, C − 1 − column); a short-edge flip sends it to (R − 1 − row, column), turned 180°. Computed from the turn of
 * a sheet about an axis in its plane; `long edge` and `short edge` as in PWG 5100.3 and IPP's `two-sided-long-edge`
 * and `two-sided-short-edge` (RFC 8011, 5.2.8). Registration of backs ±1 mm: common practice, no source.
 */
import { describe, expect, it } from 'vitest'
import { imposeBacks } from '../../src/sheets/backs.js'
import { divideSheet, type Grid, placesOf } from '../../src/sheets/grid.js'
import { imposeFronts } from '../../src/sheets/impose.js'
import { findPaper } from '../../src/sheets/papers.js'
import type { Sheet } from '../../src/sheets/sheet.js'
import { samplePieces, somewhere } from '../sheets/sample-pieces.js'

const grid = portraitGrid(3, 4)
const fronts = imposeFronts({
  pieces: samplePieces(placesOf(grid), 1, grid.pieceSize),
  grid,
  order: 'rows',
  cut: 'lines',
  title: 'cards',
})

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

function rowAndColumn(sheet: Sheet, id: string): readonly [number, number] {
  const placed = sheet.pieces.find(({ piece }) => piece.id === id)!
  return [
    countSteps((placed.yMm - grid.originYMm) / (grid.pieceSize.heightMm + grid.gapMm)),
    countSteps((placed.xMm - grid.originXMm) / (grid.pieceSize.widthMm + grid.gapMm)),
  ]
}

/** Whole steps of the grid; anything between two steps would show as a fraction. */
function countSteps(steps: number): number {
  return Number(Math.abs(steps).toFixed(4))
}

function portraitGrid(across: number, down: number): Grid {
  const outcome = divideSheet({
    paper: findPaper('letter')!,
    gapMm: 0,
    division: { kind: 'count', across, down },
    preferred: { columns: across, rows: down },
    place: somewhere,
  })
  if (!outcome.ok) throw new Error('the grid does not fit')
  return outcome.value
}
