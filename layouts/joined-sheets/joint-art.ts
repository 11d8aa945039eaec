import type { Size } from '../../src/geometry.js'
import { moveArt } from '../../src/pieces/art/move-art.js'
import { pathText, rectangle } from '../../src/pieces/art/path-text.js'
import type { SlotContent } from '../../src/pieces/faces/face.js'
import type { Art, PathShape } from '../../src/pieces/piece.js'
import { drawTextLine } from '../../src/pieces/text/text-line.js'
import type { Card } from '../../src/sets/card-set.js'
import type { LayoutRequest } from '../layout.js'
import { type JoinedSheets, joinedSheets, placeOfSheet } from './joined-sheets.js'

export interface JointOnSheet {
  /** For what the board shows. */
  readonly room: Size
  /** With the strips to glue on. */
  readonly whole: Size
  readonly request: Pick<LayoutRequest, 'typeface' | 'type'>
}

const LINE_MM = 0.25
const DASH_MM = 2
const GREY = '#595959'

/** The slot `joint` of a board that is joined; none of a board on one sheet. */
export function jointSlot(
  { part }: Pick<Card, 'part'>,
  on: JointOnSheet,
): Readonly<Record<string, SlotContent>> {
  if (part === undefined) return {}
  return { joint: { kind: 'art', draw: () => drawJoint(part.number, joinedSheets(part.of), on) } }
}

/** The lines to cut a sheet along, and the strips on which the next sheets are glued, with what goes there. */
function drawJoint(part: number, sheets: JoinedSheets, { room, whole, request }: JointOnSheet): Art {
  const { across, down } = sheets
  const { column, row } = placeOfSheet(part, sheets)
  const hasRight = column + 1 < across
  const hasBelow = row + 1 < down
  const { typeface, type } = request
  const says = (text: string) => drawTextLine({ typeface, text, sizeMm: type.adultTextMm, color: GREY }).art
  const beside = hasRight ? [says(`${part + 1}`)] : []
  const below = hasBelow ? [says(`glue sheet ${part + across} on this strip`)] : []
  const texts = [
    ...beside.map(art =>
      moveArt(
        art,
        room.widthMm + (whole.widthMm - room.widthMm - art.widthMm) / 2,
        (room.heightMm - art.heightMm) / 2,
        whole,
      ),
    ),
    ...below.map(art =>
      moveArt(
        art,
        (room.widthMm - art.widthMm) / 2,
        room.heightMm + (whole.heightMm - room.heightMm - art.heightMm) / 2,
        whole,
      ),
    ),
  ]
  const lines = [
    ...(hasRight
      ? [dashes({ xMm: whole.widthMm - LINE_MM, yMm: 0, lengthMm: room.heightMm, down: true })]
      : []),
    ...(hasBelow
      ? [dashes({ xMm: 0, yMm: whole.heightMm - LINE_MM, lengthMm: room.widthMm, down: false })]
      : []),
    ...(column > 0 ? [dashes({ xMm: 0, yMm: 0, lengthMm: room.heightMm, down: true })] : []),
    ...(row > 0 ? [dashes({ xMm: 0, yMm: 0, lengthMm: room.widthMm, down: false })] : []),
  ]
  return {
    ...whole,
    shapes: [...lines, ...texts.flatMap(({ shapes }) => shapes)],
    text: texts.flatMap(({ text }) => text),
  }
}

function dashes({
  xMm,
  yMm,
  lengthMm,
  down,
}: {
  readonly xMm: number
  readonly yMm: number
  readonly lengthMm: number
  readonly down: boolean
}): PathShape {
  const count = Math.floor(lengthMm / (2 * DASH_MM))
  const bars = Array.from({ length: count }, (_, index) => {
    const from = index * 2 * DASH_MM
    return down
      ? rectangle(xMm, yMm + from, xMm + LINE_MM, yMm + from + DASH_MM)
      : rectangle(xMm + from, yMm, xMm + from + DASH_MM, yMm + LINE_MM)
  })
  return { kind: 'path', d: pathText(bars.flat()), fill: GREY }
}
