import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Box, boxesOverlap, type Size } from '../../src/geometry.js'
import { imposeBacks } from '../../src/sheets/backs.js'
import type { Flip } from '../../src/sheets/flip.js'
import { divideSheet } from '../../src/sheets/grid.js'
import { imposeFronts } from '../../src/sheets/impose.js'
import { inTwoPasses, interleave, orderSides } from '../../src/sheets/print-order.js'
import { pieceBox, type Sheet } from '../../src/sheets/sheet.js'
import { paperNamed } from './paper-named.js'
import { anyGridRequest, sampleLettering, samplePieces, somewhere } from './sample-pieces.js'

const flips = ['long edge', 'short edge'] as const

describe('backs', () => {
  it.each(flips)('meet their fronts when the sheet is turned about its %s', flip => {
    fc.assert(
      fc.property(anyGridRequest, fc.integer({ min: 1, max: 30 }), (request, cards) => {
        const outcome = divideSheet(request)
        if (!outcome.ok) return
        const fronts = frontsOf(cards, outcome.value)
        const backs = imposeBacks({ fronts, backOf: front => front, flip, title: 'cards' })
        for (const [index, back] of backs.entries()) {
          const front = fronts[index]!
          expect(back.pieces).toHaveLength(front.pieces.length)
          for (const placed of front.pieces) {
            const behind = back.pieces.find(({ piece }) => piece.id === placed.piece.id)!
            expectSameBox(pieceBox(behind), turnedOver(pieceBox(placed), front, flip))
          }
        }
      }),
    )
  })

  it.each(flips)('read upright when the loose card is turned like the page of a book (%s)', flip => {
    for (const orientation of ['portrait', 'landscape'] as const) {
      const fronts = frontsOf(12, letterGrid(orientation))
      const [back] = imposeBacks({ fronts, backOf: front => front, flip, title: 'cards' })
      // The way up of a card's front, turned over with the sheet, must be the way up of its back.
      const [, up] = turnVector([0, -1], fronts[0]!, flip)
      for (const placed of back!.pieces) expect(placed.turn).toBe(up < 0 ? 0 : 180)
    }
  })

  it('keep the id, number and copy of their fronts', () => {
    const fronts = frontsOf(4, letterGrid())
    const [back] = imposeBacks({
      fronts,
      backOf: front => ({ ...front, id: 'pattern', number: 0, copy: 0, text: ['marsh'] }),
      flip: 'long edge',
      title: 'cards',
    })
    expect(back!.pieces.map(({ piece }) => [piece.id, piece.number, piece.copy])).toEqual(
      fronts[0]!.pieces.map(({ piece }) => [piece.id, piece.number, piece.copy]),
    )
    expect(back!.pieces[0]?.piece.text).toEqual(['marsh'])
  })

  it('stay blank where a front has none', () => {
    const fronts = frontsOf(4, letterGrid())
    const backOf = (front: (typeof fronts)[0]['pieces'][0]['piece']) =>
      front.number === 2 ? undefined : front
    const [back] = imposeBacks({ fronts, backOf, flip: 'long edge', title: 'cards' })
    expect(back!.pieces.map(({ piece }) => piece.number)).toEqual([1, 3, 4])
  })

  it('are moved on their own page by the printer’s shift', () => {
    const fronts = frontsOf(4, letterGrid())
    const request = {
      fronts,
      backOf: (front: Sheet['pieces'][0]['piece']) => front,
      flip: 'long edge',
      title: 'x',
    } as const
    const [plain] = imposeBacks(request)
    const [moved] = imposeBacks({ ...request, shift: { rightMm: 1.2, downMm: -0.8 } })
    for (const [index, placed] of moved!.pieces.entries()) {
      expect(placed.xMm).toBeCloseTo(plain!.pieces[index]!.xMm + 1.2, 9)
      expect(placed.yMm).toBeCloseTo(plain!.pieces[index]!.yMm - 0.8, 9)
    }
  })

  it('carry no cut lines: cutting goes by the front', () => {
    const [back] = imposeBacks({
      fronts: frontsOf(4, letterGrid()),
      backOf: front => front,
      flip: 'long edge',
      title: 'x',
    })
    expect(back!.cuts).toEqual([])
  })

  it('say of which sheet they are the back', () => {
    const [back] = imposeBacks({
      fronts: frontsOf(4, letterGrid()),
      backOf: front => front,
      flip: 'long edge',
      title: 'word cards',
      label: { text: 'Along the marsh', lettering: sampleLettering },
    })
    expect(back!.title).toBe('word cards, back of sheet 1 of 1')
    expect(back!.furniture[0]?.art.text[0]?.text).toBe('Along the marsh · back of sheet 1 of 1')
  })
})

describe('the bleed of a patterned back', () => {
  it('covers what a shift of up to its width would uncover, keeping off the pieces', () => {
    for (const gapMm of [0, 2, 9]) {
      const fronts = frontsOf(7, letterGrid('portrait', gapMm))
      const [back] = imposeBacks({
        fronts,
        backOf: front => front,
        flip: 'long edge',
        title: 'x',
        bleed: {
          widthMm: 3,
          paint: area => ({ ...area, shapes: [], text: [] }),
        },
      })
      const pieces = back!.pieces.map(pieceBox)
      const painted = back!.furniture.map(({ art, xMm, yMm }): Box => ({ ...art, xMm, yMm }))
      expect(painted.length).toBeGreaterThan(0)
      for (const [index, area] of painted.entries()) {
        expect([...pieces, ...painted.slice(index + 1)].some(other => boxesOverlap(area, other))).toBe(false)
      }
      const covered = (x: number, y: number) =>
        [...pieces, ...painted].some(
          box =>
            x >= box.xMm - 1e-6 &&
            x <= box.xMm + box.widthMm + 1e-6 &&
            y >= box.yMm - 1e-6 &&
            y <= box.yMm + box.heightMm + 1e-6,
        )
      for (const piece of pieces) {
        for (const dx of [-2.9, 0, piece.widthMm / 2, piece.widthMm, piece.widthMm + 2.9]) {
          for (const dy of [-2.9, 0, piece.heightMm / 2, piece.heightMm, piece.heightMm + 2.9]) {
            expect(covered(piece.xMm + dx, piece.yMm + dy)).toBe(true)
          }
        }
      }
    }
  })
})

describe('the bleed of many sheets', () => {
  it('shares its arts between sheets', () => {
    let paintings = 0
    const backs = imposeBacks({
      fronts: frontsOf(48, letterGrid()),
      backOf: front => front,
      flip: 'long edge',
      title: 'x',
      bleed: {
        widthMm: 3,
        paint: area => {
          paintings += 1
          return { ...area, shapes: [], text: [] }
        },
      },
    })
    const arts = new Set(backs.flatMap(back => back.furniture.map(placed => placed.art)))
    expect(backs).toHaveLength(4)
    expect(arts.size).toBe(paintings)
    expect(paintings).toBeLessThan(backs[0]!.furniture.length)
  })
})

describe('print order', () => {
  const fronts = frontsOf(30, letterGrid())
  const backs = imposeBacks({ fronts, backOf: front => front, flip: 'long edge', title: 'x' })
  const sidesOf = (sheets: readonly Sheet[]) =>
    sheets.map(sheet => [sheet.number, sheet.side, sheet.title.match(/sheet \d/)?.[0]])

  it('has each back behind its front for a printer that prints both sides', () => {
    expect(sidesOf(interleave(fronts, backs))).toEqual([
      [1, 'front', 'sheet 1'],
      [2, 'back', 'sheet 1'],
      [3, 'front', 'sheet 2'],
      [4, 'back', 'sheet 2'],
      [5, 'front', 'sheet 3'],
      [6, 'back', 'sheet 3'],
    ])
  })

  it('has all fronts, then all backs for card fed by hand, either way of the pile', () => {
    const backsOf = (pile: 'in order' | 'last sheet first') =>
      inTwoPasses(fronts, backs, pile)
        .slice(3)
        .map(sheet => sheet.title)
    expect(backsOf('in order')[0]).toBe('x, back of sheet 1 of 3')
    expect(backsOf('last sheet first')[0]).toBe('x, back of sheet 3 of 3')
  })
})

describe('sides for printing', () => {
  const request = { fronts: frontsOf(30, letterGrid()), flip: 'long edge' } as const
  const backs = imposeBacks({ ...request, backOf: front => front, title: 'x' })

  it('say how the printer is to turn the sheets', () => {
    expect(orderSides({ ...request, backs }).notes).toEqual([
      'Print on both sides, turned over on the long edge: every second page is the back of the page before it.',
    ])
    expect(orderSides({ ...request, backs: [] }).notes).toEqual([])
  })

  it.each([
    ['in order', 'takes sheet 1 first'],
    ['last sheet first', 'takes the last sheet first'],
  ] as const)('say how a pile is to be fed again (%s)', (pile, told) => {
    const { sheets, notes } = orderSides({ ...request, backs, pile })
    expect(sheets.map(sheet => sheet.side)).toEqual(['front', 'front', 'front', 'back', 'back', 'back'])
    expect(notes).toHaveLength(1)
    for (const part of ['print pages 1 to 3', 'over on the long edge', told, 'print pages 4 to 6'])
      expect(notes[0]).toContain(part)
  })

  it.each(['in order', 'last sheet first'] as const)(
    'bring every back behind its own front when the pile is fed as told (%s)',
    pile => {
      const { sheets } = orderSides({ ...request, backs, pile })
      const printed = sheets.slice(0, 3)
      const taken = pile === 'in order' ? printed : printed.toReversed()
      for (const [pass, front] of taken.entries()) {
        const back = sheets[3 + pass]!
        expect(back.pieces.map(({ piece }) => piece.id).toSorted()).toEqual(
          front.pieces.map(({ piece }) => piece.id).toSorted(),
        )
      }
    },
  )
})

function letterGrid(orientation: 'portrait' | 'landscape' = 'portrait', gapMm = 0) {
  const outcome = divideSheet({
    paper: paperNamed('letter')!,
    orientation,
    gapMm,
    division: { kind: 'layout' },
    preferred: { columns: 3, rows: 4 },
    place: somewhere,
  })
  if (!outcome.ok) throw new Error('the grid does not fit')
  return outcome.value
}

function frontsOf(cards: number, grid: ReturnType<typeof letterGrid>): readonly Sheet[] {
  const pieces = samplePieces(cards, 1, grid.pieceSize)
  return imposeFronts({ pieces, grid, order: 'rows', cut: 'lines', title: 'cards' })
}

/**
 * A vector of the sheet after half a turn about an axis in its plane: what lies along the axis stays, what lies
 * across it is turned round. The axis is the direction of the edge that the flip names.
 */
function turnVector(vector: readonly [number, number], sheet: Size, flip: Flip): readonly [number, number] {
  const upright = sheet.heightMm >= sheet.widthMm === (flip === 'long edge')
  const axis = upright ? [0, 1] : [1, 0]
  const along = vector[0] * axis[0]! + vector[1] * axis[1]!
  return [2 * along * axis[0]! - vector[0], 2 * along * axis[1]! - vector[1]]
}

/** Where a box of the front comes to lie when the sheet is turned over in place. */
function turnedOver(box: Box, sheet: Sheet, flip: Flip): Box {
  const centre = [sheet.widthMm / 2, sheet.heightMm / 2] as const
  const corners = [
    [box.xMm, box.yMm],
    [box.xMm + box.widthMm, box.yMm + box.heightMm],
  ].map(([x, y]) => {
    const [dx, dy] = turnVector([x! - centre[0], y! - centre[1]], sheet, flip)
    return [centre[0] + dx, centre[1] + dy] as const
  })
  const xs = corners.map(([x]) => x)
  const ys = corners.map(([, y]) => y)
  return {
    xMm: Math.min(...xs),
    yMm: Math.min(...ys),
    widthMm: Math.max(...xs) - Math.min(...xs),
    heightMm: Math.max(...ys) - Math.min(...ys),
  }
}

function expectSameBox(a: Box, b: Box): void {
  for (const edge of ['xMm', 'yMm', 'widthMm', 'heightMm'] as const) expect(a[edge]).toBeCloseTo(b[edge], 6)
}
