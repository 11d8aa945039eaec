/**
 * A sheet to print on both sides, from which a teacher reads how far her printer misses when it prints backs.
 *
 * On the front stand two crosses, on the back a field of millimetres behind each. A pin pricked through the cross
 * shows in the field: the hole lies right of the field's middle by as much as backs have to move to the right.
 * Crosses and fields stand on the sheet's upright middle line, one as far from the top as the other from the bottom,
 * so that the same sheet serves for either flip.
 */
import type { Box, Size } from '../../src/geometry.js'
import type { PlacedArt } from '../../src/pieces/piece.js'
import { type Block, flowBlocks, textBlock } from '../../src/sheets/furniture/column.js'
import type { Lettering } from '../../src/sheets/furniture/lettering.js'
import type { Sheet } from '../../src/sheets/sheet.js'
import { pinMark, pinScale } from './pin-scale.js'

export interface CalibrationRequest {
  readonly lettering: Lettering
  readonly sheetSize: Size
  readonly room: Box
}

const TITLE_MM = 5
const TEXT_MM = 3.9

const frontText = [
  'Where does your printer put backs?',
  'Print this sheet on both sides at 100 %, the way you print your cards.',
  'Prick a pin through the middle of both crosses, then turn the sheet over.',
]

const backText = [
  'This is the back.',
  'See where the two pin holes come: the lines are 1 mm apart. Take the middle of the two readings.',
  'Write it in your plan as you read it, for example: printer: {back shift: 1.2 mm right, 0.8 mm down}',
  'If the two holes differ by more than 1 mm, the sheet went in askew: print it again.',
]

/** Front and back, to be printed like any sheet with backs and no shift. */
export function calibrationSheets(request: CalibrationRequest): readonly [Sheet, Sheet] {
  const centres = scaleCentres(request.sheetSize)
  const marks = centres.map(centre => movedBy(pinMark(), centre))
  const scales = centres.flatMap(centre => pinScale(request.lettering).map(placed => movedBy(placed, centre)))
  return [
    page(request, 'front', [...instructions(request, frontText), ...marks]),
    page(request, 'back', [...instructions(request, backText), ...scales]),
  ]
}

interface Point {
  readonly xMm: number
  readonly yMm: number
}

/** Where crosses and fields stand, the same on both sides. */
export function scaleCentres(sheetSize: Size): readonly Point[] {
  return [0.36, 0.64].map(share => ({ xMm: sheetSize.widthMm / 2, yMm: sheetSize.heightMm * share }))
}

/** From the middle of a field to the far edge of the words around it, and white. */
const FIELD_REACH_MM = 14
/** Of the usual size of type, for small cards. */
const SCALES = [1, 0.9, 0.8, 0.7, 0.6, 0.5] as const

/** Above the fields; what has no room there stands below them, in smaller type where the card is small. */
function instructions(
  { lettering, room, sheetSize }: CalibrationRequest,
  lines: readonly string[],
): readonly PlacedArt[] {
  const [first, last] = scaleCentres(sheetSize) as [Point, Point]
  const above: Box = { ...room, heightMm: first.yMm - FIELD_REACH_MM - room.yMm }
  const below: Box = { ...above, yMm: last.yMm + FIELD_REACH_MM }
  const flowed = SCALES.map(scale => {
    const blocks = blocksOf(lines, scale, { lettering, widthMm: room.widthMm })
    const fits = blocks.every(({ heightMm }) => heightMm <= above.heightMm)
    return { fits, parts: flowBlocks(blocks, above) }
  })
  const { parts } = flowed.find(way => way.fits && way.parts.length <= 2) ?? flowed.at(-1)!
  return parts.flatMap((part, index) =>
    index === 0 ? part : part.map(placed => movedBy(placed, { xMm: 0, yMm: below.yMm - above.yMm })),
  )
}

function blocksOf(
  lines: readonly string[],
  scale: number,
  set: { readonly lettering: Lettering; readonly widthMm: number },
): readonly Block[] {
  return lines.map((text, index) =>
    index === 0
      ? textBlock({ ...set, text, sizeMm: TITLE_MM * scale, weight: 'bold', spaceAfterMm: 2 * scale })
      : textBlock({ ...set, text, sizeMm: TEXT_MM * scale, spaceAfterMm: scale }),
  )
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

function movedBy(placed: PlacedArt, by: Point): PlacedArt {
  return { art: placed.art, xMm: placed.xMm + by.xMm, yMm: placed.yMm + by.yMm }
}
