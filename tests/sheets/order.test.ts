import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { inChildren, inRows, inStack, type SheetPlaces } from '../../src/sheets/order.js'

/** Copies of the cards of a set, all of one copy before the next. */
const copiesOf = (cards: number, copies: number) =>
  Array.from({ length: cards * copies }, (_, index) => Math.floor(index / cards) + 1)

describe('by rows', () => {
  it('fills sheet after sheet as one reads and leaves the rest of the last one empty', () => {
    expect(inRows({ copies: copiesOf(5, 1), places: 4 })).toEqual([
      [0, 1, 2, 3],
      [4, null, null, null],
    ])
  })
})

describe('cut and stack', () => {
  it('puts card p · S + s at place p of sheet s', () => {
    expect(inStack({ copies: copiesOf(8, 1), places: 4 })).toEqual([
      [0, 2, 4, 6],
      [1, 3, 5, 7],
    ])
  })

  it('gathers the blanks of an unfilled set at the end of the last places', () => {
    expect(inStack({ copies: copiesOf(10, 1), places: 4 })).toEqual([
      [0, 3, 6, 9],
      [1, 4, 7, null],
      [2, 5, 8, null],
    ])
  })

  it('comes out child after child when there are several copies', () => {
    // Two sets of three cards on two sheets of three places: the pile at each place, from the top.
    const sheets = inStack({ copies: copiesOf(3, 2), places: 3 })
    expect(pileUp(sheets)).toEqual([0, 1, 2, 3, 4, 5])
  })
})

describe('a whole set a child', () => {
  it('begins each child’s set on a sheet of its own', () => {
    expect(inChildren({ copies: copiesOf(3, 2), places: 4 })).toEqual([
      [0, 1, 2, null],
      [3, 4, 5, null],
    ])
  })

  it('puts several children on a sheet that holds their sets whole', () => {
    expect(inChildren({ copies: copiesOf(2, 3), places: 4 })).toEqual([
      [0, 1, 2, 3],
      [4, 5, null, null],
    ])
  })

  it('cuts and stacks a set that takes several sheets by itself', () => {
    const sheets = inChildren({ copies: copiesOf(5, 2), places: 4 })
    expect(sheets).toHaveLength(4)
    expect(pileUp(sheets.slice(0, 2)).slice(0, 5)).toEqual([0, 1, 2, 3, 4])
    expect(pileUp(sheets.slice(2, 4)).slice(0, 5)).toEqual([5, 6, 7, 8, 9])
  })
})

const anySet = fc.record({
  cards: fc.integer({ min: 1, max: 60 }),
  copies: fc.integer({ min: 1, max: 8 }),
  places: fc.integer({ min: 1, max: 24 }),
})

describe('every order', () => {
  it.each([
    ['rows', inRows],
    ['stack', inStack],
    ['child', inChildren],
  ] as const)('%s prints every card exactly once on sheets of the same number of places', (_, order) => {
    fc.assert(
      fc.property(anySet, ({ cards, copies, places }) => {
        const sheets = order({ copies: copiesOf(cards, copies), places })
        expect(sheets.every(sheet => sheet.length === places)).toBe(true)
        const printed = sheets.flat().filter(card => card !== null)
        expect(printed.sort((a, b) => a - b)).toEqual(Array.from({ length: cards * copies }, (_, i) => i))
      }),
    )
  })

  it.each([
    ['rows', inRows],
    ['stack', inStack],
  ] as const)('%s takes no more sheets than must be', (_, order) => {
    fc.assert(
      fc.property(anySet, ({ cards, copies, places }) => {
        const sheets = order({ copies: copiesOf(cards, copies), places })
        expect(sheets).toHaveLength(Math.ceil((cards * copies) / places))
      }),
    )
  })

  it('stack comes out sorted, blanks last, when the pile is cut through once', () => {
    fc.assert(
      fc.property(anySet, ({ cards, copies, places }) => {
        const count = cards * copies
        const pile = pileUp(inStack({ copies: copiesOf(cards, copies), places }))
        expect(pile.slice(0, count)).toEqual(Array.from({ length: count }, (_, i) => i))
        expect(pile.slice(count).every(card => card === null)).toBe(true)
      }),
    )
  })

  it('child never lets a sheet hold a part of two sets', () => {
    fc.assert(
      fc.property(anySet, ({ cards, copies, places }) => {
        const copyOf = copiesOf(cards, copies)
        for (const sheet of inChildren({ copies: copyOf, places })) {
          const here = sheet.filter(card => card !== null).map(card => copyOf[card]!)
          const children = new Set(here)
          if (children.size > 1) expect(here).toHaveLength(children.size * cards)
        }
      }),
    )
  })
})

/** Sheets piled up with the first on top, cut, and the little piles laid under one another in order of the places. */
function pileUp(sheets: readonly SheetPlaces[]): readonly (number | null)[] {
  const places = sheets[0]?.length ?? 0
  return Array.from({ length: places }, (_, place) => sheets.map(sheet => sheet[place]!)).flat()
}
