import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Size } from '../../src/geometry.js'
import type { CardOrder } from '../../src/plan/plan.js'
import { adviseOnSheets, sizesToTry } from '../../src/sheets/advice.js'
import { estimateSheets } from '../../src/sheets/estimate.js'
import { divideSheet, type Grid, type GridRequest } from '../../src/sheets/grid.js'
import { imposeFronts } from '../../src/sheets/impose.js'
import { paperNamed } from './paper-named.js'
import { anyGridRequest, samplePieces, somewhere } from './sample-pieces.js'

const threeByFour: GridRequest = {
  paper: paperNamed('letter')!,
  gapMm: 0,
  division: { kind: 'count', across: 3, down: 4 },
  preferred: { columns: 3, rows: 4 },
  place: somewhere,
}

describe('an estimate', () => {
  it('counts sheets of card, sides, pieces, empty places and cuts', () => {
    // 10 cards for 12 children, 12 to a sheet: 120 pieces on 10 sheets, in two piles of five, 9 cuts each.
    const estimate = estimateSheets({
      grid: gridOf(threeByFour),
      cards: 10,
      copies: 12,
      order: 'stack',
      backs: true,
    })
    expect(estimate).toMatchObject({
      sheetsOfCard: 10,
      sides: 20,
      pieces: 120,
      emptyPlaces: 0,
      cutsPerPile: 9,
      piles: 2,
      cuts: 18,
    })
  })

  it('counts a sheet a child where each set stays on a sheet of its own', () => {
    const estimate = estimateSheets({
      grid: gridOf(threeByFour),
      cards: 10,
      copies: 12,
      order: 'child',
      backs: false,
    })
    expect([estimate.sheetsOfCard, estimate.emptyPlaces]).toEqual([12, 24])
  })

  it('says what share of the card goes to waste', () => {
    const grid = gridOf({ ...threeByFour, marginMm: 0 })
    const half = estimateSheets({ grid, cards: 6, copies: 1, order: 'rows', backs: false })
    expect(half.wasteShare).toBeCloseTo(0.5, 6)
  })

  it('counts the cuts that are drawn', () => {
    for (const [cards, order] of [
      [5, 'rows'],
      [16, 'stack'],
      [2, 'child'],
      [30, 'child'],
    ] as const) {
      const grid = gridOf(threeByFour)
      const [first] = imposeFronts({
        pieces: samplePieces(cards, 3, grid.pieceSize),
        grid,
        order,
        cut: 'lines',
        title: 'x',
      })
      const estimate = estimateSheets({ grid, cards, copies: 3, order, backs: false })
      expect(estimate.cutsPerPile).toBe(first!.cuts.length)
    }
  })

  it('agrees with the sheets that are made', () => {
    fc.assert(
      fc.property(
        anyGridRequest,
        fc.integer({ min: 1, max: 30 }),
        fc.integer({ min: 1, max: 4 }),
        fc.constantFrom<CardOrder>('rows', 'stack', 'child'),
        (request, cards, copies, order) => {
          const outcome = divideSheet(request)
          if (!outcome.ok) return
          const grid = outcome.value
          const pieces = samplePieces(cards, copies, grid.pieceSize)
          const sheets = imposeFronts({ pieces, grid, order, cut: 'none', title: 'x' })
          const estimate = estimateSheets({ grid, cards, copies, order, backs: false })
          expect(estimate.sheetsOfCard).toBe(sheets.length)
          expect(estimate.pieces).toBe(sheets.flatMap(sheet => sheet.pieces).length)
        },
      ),
    )
  })
})

describe('advice', () => {
  it('tells which division would save how many sheets, the most first', () => {
    // 72 cards: 3 × 4 takes 6 sheets, 4 × 4 takes 5 (72 / 16 = 4.5), 3 × 5 takes 5.
    const advice = adviceFor(threeByFour, { cards: 72, copies: 1, order: 'rows' })
    expect(advice.map(one => one.text)).toEqual([
      '4 across would save 1 sheet (cards of 50.8 × 64.9 mm).',
      '5 down would save 1 sheet (cards of 67.7 × 51.9 mm).',
    ])
  })

  it('offers nothing on which the longest word no longer fits', () => {
    const set = { cards: 72, copies: 1, order: 'rows' as const }
    expect(adviceFor(threeByFour, { ...set, wordsOn: () => null })).toEqual([])
    // 4 across makes cards 50.8 mm wide, 6 down cards 43.2 mm high; 5 down keeps 67.7 × 51.9 mm.
    const wordsOn = ({ widthMm, heightMm }: Size) => (widthMm < 60 || heightMm < 50 ? null : { points: 33 })
    expect(adviceFor(threeByFour, { ...set, wordsOn }).map(one => one.text)).toEqual([
      '5 down would save 1 sheet (cards of 67.7 × 51.9 mm, words of 33 pt).',
    ])
  })

  it('asks about the words on every size of piece that it may speak of', () => {
    const request = { cards: 72, copies: 1, order: 'rows' as const, grid: gridOf(threeByFour) }
    const asked = sizesToTry({ ...request, gridRequest: threeByFour })
    adviseOnSheets({
      ...request,
      gridRequest: threeByFour,
      wordsOn: size => {
        expect(asked).toContainEqual(size)
        return null
      },
    })
    expect(asked.length).toBeGreaterThan(0)
  })

  it('tells what cut and stack would save over a sheet a child', () => {
    const advice = adviceFor(threeByFour, { cards: 10, copies: 12, order: 'child' })
    expect(advice.map(one => one.text)).toContain('`order: stack` would save 2 sheets.')
  })

  it('offers larger cards where places stay empty anyway', () => {
    const advice = adviceFor(threeByFour, { cards: 6, copies: 1, order: 'rows' })
    expect(advice).toEqual([
      {
        text: '2 across and 3 down would give larger cards (101.6 × 86.5 mm) on as many sheets.',
        savedSheets: 0,
      },
    ])
  })

  it('promises what the changed plan then takes', () => {
    const request = { cards: 100, copies: 3, order: 'rows' as const }
    const [best] = adviceFor(threeByFour, request)
    const across = Number(best?.text.match(/^(\d+) across/)?.[1])
    const changed = gridOf({ ...threeByFour, division: { kind: 'count', across, down: 4 } })
    const saved =
      estimateSheets({ ...request, grid: gridOf(threeByFour), backs: false }).sheetsOfCard -
      estimateSheets({ ...request, grid: changed, backs: false }).sheetsOfCard
    expect(saved).toBe(best?.savedSheets)
  })
})

function adviceFor(
  gridRequest: GridRequest,
  rest: Omit<Parameters<typeof adviseOnSheets>[0], 'grid' | 'gridRequest'>,
) {
  return adviseOnSheets({ grid: gridOf(gridRequest), gridRequest, ...rest })
}

function gridOf(request: GridRequest): Grid {
  const outcome = divideSheet(request)
  if (!outcome.ok) throw new Error('the grid does not fit')
  return outcome.value
}
