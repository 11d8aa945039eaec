/** Blank pieces and sheets' requests for the tests of this stage. */
import fc from 'fast-check'
import type { Size } from '../../src/geometry.js'
import type { Art, Piece } from '../../src/pieces/piece.js'
import type { Lettering, LineOfText } from '../../src/sheets/furniture/lettering.js'
import type { GridRequest } from '../../src/sheets/grid.js'
import { papers } from '../../src/sheets/papers.js'

export const somewhere = { file: 'week.yaml', line: 12, column: 5 }

/** Cards 1 to `count`, all of copy 1 first. */
export function samplePieces(count: number, copies: number, size: Size): readonly Piece[] {
  return Array.from({ length: copies }, (_, copy) =>
    Array.from(
      { length: count },
      (_, index): Piece => ({
        ...size,
        id: `card-${index + 1}-${copy + 1}`,
        kind: 'card',
        number: index + 1,
        copy: copy + 1,
        art: [],
        text: [],
        marks: [],
      }),
    ),
  ).flat()
}

/** Letters half as wide as they are high, in a line a third higher than the em, as an ordinary face has them. */
export const sampleLettering: Lettering = Object.assign(
  ({ text, sizeMm }: LineOfText): Art => ({
    widthMm: text.length * sizeMm * 0.5,
    heightMm: sizeMm * 1.3,
    shapes: [],
    text: [{ text, xMm: 0, baselineMm: sizeMm, widthMm: text.length * sizeMm * 0.5, sizeMm }],
  }),
  { widthMm: ({ text, sizeMm }: LineOfText) => text.length * sizeMm * 0.5 },
)

const paper = fc.constantFrom(...papers)
const orientation = fc.constantFrom('portrait' as const, 'landscape' as const, undefined)
const margin = fc.oneof(fc.constant(undefined), fc.double({ min: 0, max: 25, noNaN: true }))
const gap = fc.oneof(fc.constant(0), fc.double({ min: 0, max: 12, noNaN: true }))
const howMany = fc.integer({ min: 1, max: 9 })
const edge = fc.double({ min: 12, max: 150, noNaN: true })

const division = fc.oneof(
  fc.record({ kind: fc.constant('count' as const), across: howMany, down: howMany }),
  fc.record({ kind: fc.constant('count' as const), across: howMany }),
  fc.record({ kind: fc.constant('count' as const), down: howMany }),
  fc.record({ kind: fc.constant('card' as const), size: fc.record({ widthMm: edge, heightMm: edge }) }),
  fc.constant({ kind: 'layout' as const }),
)

/** Any request that a plan can make, those included that cannot be met. */
export const anyGridRequest: fc.Arbitrary<GridRequest> = fc
  .record({ paper, orientation, margin, gapMm: gap, division, across: howMany, down: howMany })
  .map(({ paper, orientation, margin, gapMm, division, across, down }) => ({
    paper,
    ...(orientation === undefined ? {} : { orientation }),
    ...(margin === undefined ? {} : { marginMm: margin }),
    gapMm,
    division,
    preferred: { columns: across, rows: down },
    place: somewhere,
  }))
