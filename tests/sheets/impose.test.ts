import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Box, boxContains, boxesOverlap, insetBox } from '../../src/geometry.js'
import type { CardOrder, CutStyle } from '../../src/plan/plan.js'
import { planCuts } from '../../src/sheets/cutting-plan.js'
import { divideSheet, type Grid, placeBox, placesOf, printableBox } from '../../src/sheets/grid.js'
import { imposeFronts } from '../../src/sheets/impose.js'
import { UNREACHABLE_EDGE_MM } from '../../src/sheets/margins.js'
import { pieceBox, type Sheet } from '../../src/sheets/sheet.js'
import { paperNamed } from './paper-named.js'
import { anyGridRequest, sampleLettering, samplePieces, somewhere } from './sample-pieces.js'

const anyJob = fc.record({
  request: anyGridRequest,
  cards: fc.integer({ min: 1, max: 40 }),
  copies: fc.integer({ min: 1, max: 4 }),
  order: fc.constantFrom<CardOrder>('rows', 'stack', 'child'),
  cut: fc.constantFrom<CutStyle>('lines', 'ticks', 'none'),
})

const label = { text: 'Along the marsh · Otters · word cards', lettering: sampleLettering }

/** Runs `check` on the sheets of many jobs; jobs that fit no paper are passed over. */
function forAnyJob(
  check: (job: {
    sheets: readonly Sheet[]
    grid: Grid
    cards: number
    copies: number
    order: CardOrder
  }) => void,
): void {
  let made = 0
  fc.assert(
    fc.property(anyJob, ({ request, cards, copies, order, cut }) => {
      const outcome = divideSheet(request)
      if (!outcome.ok) return
      made += 1
      const grid = outcome.value
      const pieces = samplePieces(cards, copies, grid.pieceSize)
      check({
        sheets: imposeFronts({ pieces, grid, order, cut, title: 'cards', label }),
        grid,
        cards,
        copies,
        order,
      })
    }),
    { numRuns: 400 },
  )
  expect(made).toBeGreaterThan(100)
}

describe('sheets of pieces, whatever the paper, grid, count and order', () => {
  it('hold every piece exactly as often as asked', () => {
    forAnyJob(({ sheets, grid, cards, copies }) => {
      const printed = sheets.flatMap(sheet => sheet.pieces.map(({ piece }) => piece.id))
      const asked = samplePieces(cards, copies, grid.pieceSize).map(piece => piece.id)
      expect(printed.toSorted()).toEqual(asked.toSorted())
    })
  })

  it('keep pieces apart and within the margins', () => {
    forAnyJob(({ sheets, grid }) => {
      const room = printableBox(grid.sheetSize, grid.margins)
      for (const sheet of sheets) {
        const boxes = sheet.pieces.map(pieceBox)
        for (const [index, box] of boxes.entries()) {
          expect(boxContains(room, box)).toBe(true)
          expect(boxes.slice(index + 1).some(other => boxesOverlap(box, other))).toBe(false)
        }
      }
    })
  })

  it('draw each cut once and none through a piece', () => {
    forAnyJob(({ sheets }) => {
      for (const sheet of sheets) {
        const drawn = sheet.cuts.map(cut =>
          [cut.x1Mm, cut.y1Mm, cut.x2Mm, cut.y2Mm].map(mm => mm.toFixed(3)).join(' '),
        )
        expect(new Set(drawn).size).toBe(drawn.length)
        for (const cut of sheet.cuts) {
          const line = {
            xMm: Math.min(cut.x1Mm, cut.x2Mm),
            yMm: Math.min(cut.y1Mm, cut.y2Mm),
            widthMm: Math.abs(cut.x2Mm - cut.x1Mm),
            heightMm: Math.abs(cut.y2Mm - cut.y1Mm),
          }
          expect(sheet.pieces.some(placed => boxesOverlap(line, insetBox(pieceBox(placed), 1e-3)))).toBe(
            false,
          )
        }
      }
    })
  })

  it('keep labels clear of pieces and in the printer’s reach', () => {
    let labelled = 0
    forAnyJob(({ sheets, grid }) => {
      const reach = insetBox({ xMm: 0, yMm: 0, ...grid.sheetSize }, UNREACHABLE_EDGE_MM)
      for (const sheet of sheets) {
        for (const { art, xMm, yMm } of sheet.furniture) {
          labelled += 1
          const box: Box = { xMm, yMm, widthMm: art.widthMm, heightMm: art.heightMm }
          expect(boxContains(reach, box)).toBe(true)
          expect(sheet.pieces.some(placed => boxesOverlap(box, pieceBox(placed)))).toBe(false)
        }
      }
    })
    expect(labelled).toBeGreaterThan(100)
  })

  it('come out sorted from cut and stack, when cut and piled as the cutting plan says', () => {
    forAnyJob(({ sheets, grid, cards, copies, order }) => {
      if (order !== 'stack') return
      const gathered = cutAndGather(sheets, grid)
      const expected = samplePieces(cards, copies, grid.pieceSize).map(piece => piece.id)
      expect(gathered.slice(0, expected.length)).toEqual(expected)
      expect(gathered.slice(expected.length).every(id => id === undefined)).toBe(true)
    })
  })
})

describe('a sheet', () => {
  it('tells which of how many it is, in its title and in its label', () => {
    const grid = letterGrid()
    const pieces = samplePieces(16, 1, grid.pieceSize)
    const [, second] = imposeFronts({ pieces, grid, order: 'rows', cut: 'lines', title: 'word cards', label })
    expect(second?.title).toBe('word cards, sheet 2 of 2')
    expect(second?.furniture[0]?.art.text[0]?.text).toBe(
      'Along the marsh · Otters · word cards · sheet 2 of 2',
    )
  })

  it('draws a slanting line over the top right corner of every piece whose corner is to be cut off', () => {
    const grid = letterGrid()
    const pieces = samplePieces(5, 1, grid.pieceSize)
    const cornersOf = (cut: CutStyle) => {
      const [sheet] = imposeFronts({ pieces, grid, order: 'rows', cut, cutCorners: true, title: 'x' })
      const slanting = sheet!.cuts.filter(mark => mark.x1Mm !== mark.x2Mm && mark.y1Mm !== mark.y2Mm)
      return { sheet: sheet!, slanting }
    }
    for (const cut of ['lines', 'ticks'] as const) {
      const { sheet, slanting } = cornersOf(cut)
      expect(slanting.map(mark => [mark.x2Mm, mark.y1Mm])).toEqual(
        sheet.pieces.map(({ piece, xMm, yMm }) => [xMm + piece.widthMm, yMm]),
      )
      for (const mark of slanting) expect(mark.x2Mm - mark.x1Mm).toBeCloseTo(mark.y2Mm - mark.y1Mm, 9)
    }
    expect(cornersOf('none').sheet.cuts).toEqual([])
  })

  it('draws white lines over the edges that dark pieces share, and white corners', () => {
    const grid = letterGrid()
    const pieces = samplePieces(12, 1, grid.pieceSize)
    const request = { pieces, grid, order: 'rows', cutCorners: true, title: 'x' } as const
    const whiteOf = (cut: CutStyle, dark: boolean) =>
      imposeFronts({ ...request, cut, dark })[0]!.cuts.filter(mark => mark.white)
    expect(whiteOf('lines', false)).toEqual([])
    // 3 across and 4 down share 2 × 4 upright edges and 3 × 3 level ones, and have 12 corners.
    expect(whiteOf('lines', true)).toHaveLength(2 * 4 + 3 * 3 + 12)
    expect(whiteOf('ticks', true)).toHaveLength(12)
  })

  it('refuses a piece that is not as large as its place', () => {
    const grid = letterGrid()
    const pieces = samplePieces(1, 1, { widthMm: 10, heightMm: 10 })
    expect(() => imposeFronts({ pieces, grid, order: 'rows', cut: 'lines', title: 'x' })).toThrow(RangeError)
  })
})

function letterGrid(): Grid {
  const outcome = divideSheet({
    paper: paperNamed('letter')!,
    gapMm: 0,
    division: { kind: 'layout' },
    preferred: { columns: 3, rows: 4 },
    place: somewhere,
  })
  if (!outcome.ok) throw new Error('the grid does not fit')
  return outcome.value
}

/**
 * The trimmer at work, by the cutting plan's own cuts: the pile of sheets cut upright into strips, the strips piled
 * with the left one on top, cut level, and the little piles laid under one another from the top row down. Gives what
 * lies in the pile from the top: a card's id, or `undefined` for a blank.
 */
function cutAndGather(sheets: readonly Sheet[], grid: Grid): readonly (string | undefined)[] {
  const cuts = planCuts({ grid, order: 'stack', cut: 'lines' }).steps.flatMap(step => step.cuts)
  const at = (direction: 'upright' | 'level', paperMm: number) =>
    [0, ...cuts.filter(cut => cut.direction === direction).map(cut => cut.atMm), paperMm].sort(
      (a, b) => a - b,
    )
  const columns = between(at('upright', grid.sheetSize.widthMm))
  const rows = between(at('level', grid.sheetSize.heightMm))
  const places = Array.from({ length: placesOf(grid) }, (_, place) => placeBox(grid, place))
  const cardColumns = columns.filter(x =>
    places.some(place => x > place.xMm && x < place.xMm + place.widthMm),
  )
  const cardRows = rows.filter(y => places.some(place => y > place.yMm && y < place.yMm + place.heightMm))
  const pileOfStrips = cardColumns.flatMap(x => sheets.map(sheet => ({ sheet, x })))
  return cardRows.flatMap(y =>
    pileOfStrips.map(({ sheet, x }) => {
      const under = { xMm: x, yMm: y, widthMm: 0, heightMm: 0 }
      return sheet.pieces.find(placed => boxContains(pieceBox(placed), under))?.piece.id
    }),
  )
}

/** The middles of the strips between cuts. */
function between(positions: readonly number[]): readonly number[] {
  return positions.slice(1).map((to, index) => (positions[index]! + to) / 2)
}
