import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { boxContains, boxesOverlap } from '../../src/geometry.js'
import { hasErrors } from '../../src/problems.js'
import {
  blockBox,
  divideSheet,
  type Grid,
  type GridRequest,
  pageRoom,
  placeBox,
  placesOf,
  printableBox,
} from '../../src/sheets/grid.js'
import { paperNamed } from './paper-named.js'
import { anyGridRequest, somewhere } from './sample-pieces.js'

const letter = paperNamed('letter')!

describe('dividing a sheet by count', () => {
  it('gives 3 across and 4 down on Letter, centred, edges shared', () => {
    const grid = gridOf({ division: { kind: 'count', across: 3, down: 4 } })
    expect([grid.columns, grid.rows]).toEqual([3, 4])
    expect(grid.pieceSize.widthMm).toBeCloseTo((215.9 - 2 * 6.35) / 3, 2)
    expect(grid.pieceSize.heightMm).toBeCloseTo((279.4 - 2 * 10) / 4, 2)
    expect(placeBox(grid, 1).xMm).toBeCloseTo(placeBox(grid, 0).xMm + grid.pieceSize.widthMm, 6)
    expect(placeBox(grid, 3).yMm).toBeCloseTo(placeBox(grid, 0).yMm + grid.pieceSize.heightMm, 6)
  })

  it('obeys a margin that the teacher sets on all four sides', () => {
    const grid = gridOf({ marginMm: 12.7, division: { kind: 'count', across: 2, down: 2 } })
    const block = blockBox(grid)
    expect(block.xMm).toBeCloseTo(12.7, 2)
    expect(block.yMm).toBeCloseTo(12.7, 2)
    expect(block.widthMm).toBeCloseTo(215.9 - 25.4, 2)
    expect(block.heightMm).toBeCloseTo(279.4 - 25.4, 2)
  })

  it('finds the missing count from the shape of piece that the layout likes', () => {
    const preferred = { columns: 3, rows: 4 }
    expect(gridOf({ preferred, division: { kind: 'count', across: 6 } }).rows).toBe(8)
    expect(gridOf({ preferred, division: { kind: 'count', down: 2 } }).columns).toBe(2)
  })

  it('takes the layout’s own count and orientation where the plan names none', () => {
    const preferred = { columns: 4, rows: 3, orientation: 'landscape' as const }
    const grid = gridOf({ preferred, division: { kind: 'layout' } })
    expect([grid.orientation, grid.columns, grid.rows]).toEqual(['landscape', 4, 3])
  })
})

describe('dividing a sheet by card size', () => {
  it('chooses the orientation that wastes least and says how much', () => {
    const grid = gridOf({ division: { kind: 'card', size: { widthMm: 63, heightMm: 88 } } })
    // Upright 3 × 3 = 9 cards, across 4 × 2 = 8: counted by hand from 203.2 × 266.7 mm within the margins.
    expect([grid.orientation, grid.columns, grid.rows]).toEqual(['portrait', 3, 3])
    expect(grid.wasteShare).toBeCloseTo(1 - (9 * 63 * 88) / (215.9 * 279.4), 6)
  })

  it('turns the paper when that takes more cards', () => {
    const grid = gridOf({ division: { kind: 'card', size: { widthMm: 88, heightMm: 63 } } })
    expect([grid.orientation, grid.columns, grid.rows]).toEqual(['landscape', 3, 3])
  })

  it('keeps to the orientation that the plan names', () => {
    const size = { widthMm: 88, heightMm: 63 }
    const grid = gridOf({ orientation: 'portrait', division: { kind: 'card', size } })
    expect([grid.orientation, grid.columns, grid.rows]).toEqual(['portrait', 2, 4])
  })

  it('lets a card fit that fills the room to the last', () => {
    const size = { widthMm: 215.9 / 3, heightMm: 279.4 / 4 }
    expect(placesOf(gridOf({ marginMm: 0, division: { kind: 'card', size } }))).toBe(12)
  })
})

describe('a sheet that cannot be divided as asked', () => {
  it('names card and room, with the place in the plan', () => {
    const [problem] = problemsOf({ division: { kind: 'card', size: { widthMm: 300, heightMm: 90 } } })
    expect(problem?.severity).toBe('error')
    expect(problem?.place).toEqual(somewhere)
    expect(problem?.message).toBe(
      'a card of 300 × 90 mm does not fit on letter paper (203.2 × 266.7 mm within the margins)',
    )
  })

  it('says so when the card would fit with the paper turned', () => {
    const [problem] = problemsOf({
      orientation: 'portrait',
      division: { kind: 'card', size: { widthMm: 250, heightMm: 90 } },
    })
    expect(problem?.advice).toContain('turned the other way')
  })

  it('refuses pieces too small to cut', () => {
    const [problem] = problemsOf({ division: { kind: 'count', across: 40, down: 2 } })
    expect(problem?.message).toContain('40 across and 2 down make pieces too small to cut')
  })

  it('refuses a card too small to hold', () => {
    const [problem] = problemsOf({ division: { kind: 'card', size: { widthMm: 5, heightMm: 60 } } })
    expect(problem?.message).toContain('too small to cut and hold')
  })

  it('refuses margins that leave nothing', () => {
    const [problem] = problemsOf({ marginMm: 120, division: { kind: 'count', across: 1, down: 1 } })
    expect(problem?.message).toContain('the margins leave nothing')
  })

  it('speaks of the margins where not even a single piece finds room between them', () => {
    const one = { kind: 'count', across: 1, down: 1 } as const
    const [problem] = problemsOf({ paper: paperNamed('a6')!, marginMm: 50, division: one })
    expect(problem?.message).toBe('the margins leave too little of the a6 paper: 5 × 48 mm')
  })

  it('warns of a margin that printers do not reach, and obeys it', () => {
    const outcome = divideSheet(request({ marginMm: 2, division: { kind: 'count', across: 2, down: 2 } }))
    expect(outcome.ok).toBe(true)
    expect(outcome.problems.map(problem => problem.severity)).toEqual(['warning'])
  })
})

describe('the room for a page of text', () => {
  it('keeps to margins that printers reach, even where the cards fill the paper', () => {
    expect(pageRoom(gridOf({ marginMm: 0 })).xMm).toBe(6.35)
    expect(pageRoom(gridOf({ marginMm: 20 })).xMm).toBe(20)
  })
})

describe('every grid', () => {
  it('keeps all its pieces apart, within the margins and the same on the left and right, top and bottom', () => {
    fc.assert(
      fc.property(anyGridRequest, asked => {
        const outcome = divideSheet(asked)
        if (!outcome.ok) return hasErrors(outcome.problems)
        const grid = outcome.value
        const boxes = Array.from({ length: placesOf(grid) }, (_, place) => placeBox(grid, place))
        const room = printableBox(grid.sheetSize, grid.margins)
        for (const [index, box] of boxes.entries()) {
          expect(boxContains(room, box)).toBe(true)
          expect(boxes.slice(index + 1).some(other => boxesOverlap(box, other))).toBe(false)
        }
        const block = blockBox(grid)
        expect(block.xMm * 2 + block.widthMm).toBeCloseTo(grid.sheetSize.widthMm, 4)
        expect(block.yMm * 2 + block.heightMm).toBeCloseTo(grid.sheetSize.heightMm, 4)
        return true
      }),
      { numRuns: 500 },
    )
  })

  it('divided by card size, could take no further row or column', () => {
    fc.assert(
      fc.property(anyGridRequest, asked => {
        const outcome = divideSheet(asked)
        if (!outcome.ok || asked.division.kind !== 'card') return
        const grid = outcome.value
        const room = printableBox(grid.sheetSize, grid.margins)
        const block = blockBox(grid)
        expect(block.widthMm + grid.gapMm + grid.pieceSize.widthMm).toBeGreaterThan(room.widthMm)
        expect(block.heightMm + grid.gapMm + grid.pieceSize.heightMm).toBeGreaterThan(room.heightMm)
      }),
      { numRuns: 500 },
    )
  })
})

function request(parts: Partial<GridRequest>): GridRequest {
  return {
    paper: letter,
    gapMm: 0,
    division: { kind: 'layout' },
    preferred: { columns: 3, rows: 4 },
    place: somewhere,
    ...parts,
  }
}

function gridOf(parts: Partial<GridRequest>): Grid {
  const outcome = divideSheet(request(parts))
  if (!outcome.ok) throw new Error(outcome.problems.map(problem => problem.message).join('\n'))
  return outcome.value
}

function problemsOf(parts: Partial<GridRequest>) {
  const outcome = divideSheet(request(parts))
  return outcome.ok ? [] : outcome.problems
}
