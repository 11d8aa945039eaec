/**
 * A sheet to print on both sides, from which a teacher reads how far her printer misses when it prints backs.
 *
 * On the front stand two pin marks, on the back a scale behind each. A pin pricked through the mark shows on the
 * scale: the hole lies right of the scale's middle by as much as backs have to move to the right. Marks and scales
 * stand on the sheet's upright middle line, one as far from the top as the other from the bottom, so that the same
 * sheet serves for either flip.
 */
import type { Box, Size } from '../../geometry.js'
import type { Art, PlacedArt } from '../../pieces/piece.js'
import type { Sheet } from '../sheet.js'
import { flowBlocks, textBlock } from './column.js'
import type { Lettering } from './lettering.js'
import { drawStrokes, type Segment } from './strokes.js'

export interface CalibrationRequest {
  readonly lettering: Lettering
  readonly sheetSize: Size
  readonly room: Box
}

const REACH_MM = 6
const STROKE_MM = 0.2
const TEXT_MM = 3.6
const NUMBER_MM = 2

/** Front and back, to be printed like any sheet with backs and no shift. */
export function calibrationSheets(request: CalibrationRequest): readonly [Sheet, Sheet] {
  const centres = scaleCentres(request.sheetSize)
  const marks = centres.map(centre => around(pinMark(), centre))
  const scales = centres.flatMap(centre =>
    backScale(request.lettering).map(placed => shifted(placed, centre)),
  )
  return [
    page(request, 'front', [...marks, ...instructions(request, frontText)]),
    page(request, 'back', [...scales, ...instructions(request, backText)]),
  ]
}

/** Where pin marks and scales stand, the same on both sides. */
export function scaleCentres(sheetSize: Size): readonly { readonly xMm: number; readonly yMm: number }[] {
  return [0.36, 0.64].map(share => ({ xMm: sheetSize.widthMm / 2, yMm: sheetSize.heightMm * share }))
}

const frontText = [
  'Where does your printer put backs?',
  'Print this sheet on both sides, the way you print your cards, at 100 %.',
  'Prick a pin through the middle of both crosses, then turn the sheet over.',
]

const backText = [
  'This is the back.',
  'See where the pin holes come on the scales; a small step is half a millimetre. Take the middle of the two readings.',
  'Write it into your plan as you read it, for example: printer: {back shift: 1.2 mm right, 0.8 mm down}',
]

function instructions(
  { lettering, room }: CalibrationRequest,
  lines: readonly string[],
): readonly PlacedArt[] {
  const [first, ...rest] = lines
  const blocks = [
    textBlock({
      lettering,
      widthMm: room.widthMm,
      text: first!,
      sizeMm: TEXT_MM * 1.4,
      weight: 'bold',
      spaceAfterMm: 2,
    }),
    ...rest.map(text =>
      textBlock({ lettering, widthMm: room.widthMm, text, sizeMm: TEXT_MM, spaceAfterMm: 1 }),
    ),
  ]
  return flowBlocks(blocks, room).flat()
}

function page(request: CalibrationRequest, side: 'front' | 'back', furniture: readonly PlacedArt[]): Sheet {
  return {
    widthMm: request.sheetSize.widthMm,
    heightMm: request.sheetSize.heightMm,
    number: side === 'front' ? 1 : 2,
    side,
    kind: 'calibration',
    title: `Calibration of backs, ${side}`,
    pieces: [],
    cuts: [],
    furniture,
  }
}

function pinMark(): Art {
  const size = { widthMm: 12, heightMm: 12 }
  const segments: readonly Segment[] = [
    [0, 6, 12, 6],
    [6, 0, 6, 12],
  ]
  return drawStrokes({ size, segments, widthMm: STROKE_MM })
}

/** A cross with a step every half millimetre, numbers every two, and the four directions in words; about (0, 0). */
function backScale(lettering: Lettering): readonly PlacedArt[] {
  const edge = REACH_MM + 0.5
  const steps = Array.from({ length: 4 * REACH_MM + 1 }, (_, index) => index / 2 - REACH_MM)
  const ticks = steps.flatMap((at): readonly Segment[] => {
    const length = Number.isInteger(at) ? (at % 2 === 0 ? 1.6 : 1.1) : 0.6
    return [
      [edge + at, edge - length, edge + at, edge + length],
      [edge - length, edge + at, edge + length, edge + at],
    ]
  })
  const axes: readonly Segment[] = [
    [0, edge, 2 * edge, edge],
    [edge, 0, edge, 2 * edge],
  ]
  const cross = drawStrokes({
    size: { widthMm: 2 * edge, heightMm: 2 * edge },
    segments: [...axes, ...ticks],
    widthMm: STROKE_MM,
  })
  const numbers = [-6, -4, -2, 2, 4, 6].flatMap(at => {
    const art = lettering({ text: String(Math.abs(at)), sizeMm: NUMBER_MM })
    return [
      { art, xMm: at - art.widthMm / 2, yMm: 1.8 },
      { art, xMm: 2, yMm: at - art.heightMm / 2 },
    ]
  })
  return [{ art: cross, xMm: -edge, yMm: -edge }, ...numbers, ...directions(lettering)]
}

function directions(lettering: Lettering): readonly PlacedArt[] {
  const word = (text: string) => lettering({ text, sizeMm: NUMBER_MM * 1.4 })
  const [right, left, up, down] = [word('right'), word('left'), word('up'), word('down')] as const
  const far = REACH_MM + 1.5
  return [
    { art: right, xMm: far, yMm: -right.heightMm / 2 },
    { art: left, xMm: -far - left.widthMm, yMm: -left.heightMm / 2 },
    { art: up, xMm: -up.widthMm / 2, yMm: -far - up.heightMm },
    { art: down, xMm: -down.widthMm / 2, yMm: far },
  ]
}

function around(art: Art, centre: { readonly xMm: number; readonly yMm: number }): PlacedArt {
  return { art, xMm: centre.xMm - art.widthMm / 2, yMm: centre.yMm - art.heightMm / 2 }
}

function shifted(placed: PlacedArt, by: { readonly xMm: number; readonly yMm: number }): PlacedArt {
  return { art: placed.art, xMm: placed.xMm + by.xMm, yMm: placed.yMm + by.yMm }
}
