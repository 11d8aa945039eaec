import type { Size } from '../../src/geometry.js'
import { moveArt } from '../../src/pieces/art/move-art.js'
import { pathText, polygon } from '../../src/pieces/art/path-text.js'
import { mm } from '../../src/pieces/faces/face.js'
import type { Row } from '../../src/pieces/faces/flow-page.js'
import { Slot } from '../../src/pieces/faces/slot.js'
import { disc } from '../../src/pieces/marks/broken-lines.js'
import { drawCellLines } from '../../src/pieces/parts/cell-lines.js'
import { textRow } from '../../src/pieces/parts/table-rows.js'
import type { Art } from '../../src/pieces/piece.js'
import { drawTextLine } from '../../src/pieces/text/text-line.js'
import type { LayoutRequest } from '../layout.js'

const LINE_MM = 0.6
const MOST_ACROSS_MM = 110
/** Between the disc and the grid. */
const GAP_MM = 10

/** A disc to spin a paper clip on and a grid to put a finger on, for whom a die rolls off the table too often. */
export function numberMakers(
  { type, measure, typeface }: LayoutRequest,
  numbers: readonly (readonly number[])[],
  room: Size,
): readonly Row[] {
  const acrossMm = Math.min(MOST_ACROSS_MM, (room.widthMm - GAP_MM) / 2)
  const style = { sizeMm: type.adultTextMm }
  const told = (text: string): Row => textRow(text, { style, widthMm: room.widthMm, measure })
  const write = (text: string, sizeMm: number): Art =>
    drawTextLine({ typeface, text, sizeMm, weight: 'bold' }).art
  return [
    told(
      'The disc: hold a pencil point upright in its middle, through the end of a paper clip. Flick the clip. The number under its tip is yours; on a line, flick again.',
    ),
    told('The grid: shut your eyes and put a finger down. The number under it is yours.'),
    {
      heightMm: acrossMm + GAP_MM,
      slots: {
        disc: { kind: 'art', draw: size => drawDisc(numbers.length, size, write) },
        grid: { kind: 'art', draw: size => drawGrid(numbers, size, write) },
      },
      tree: (
        <div
          style={{ display: 'flex', width: '100%', height: '100%', alignItems: 'flex-end', gap: mm(GAP_MM) }}
        >
          <Slot name="disc" style={{ width: mm(acrossMm), height: mm(acrossMm) }} />
          <Slot name="grid" style={{ width: mm(acrossMm), height: mm(acrossMm) }} />
        </div>
      ),
    },
  ]
}

type Write = (text: string, sizeMm: number) => Art

/** Equal sectors with the numbers in them, the first from the top on, clockwise. */
export function drawDisc(faces: number, room: Size, write: Write): Art {
  const centre = room.widthMm / 2
  const radius = centre - LINE_MM
  const step = (2 * Math.PI) / faces
  const at = (angle: number, distance: number): readonly [number, number] => [
    centre + distance * Math.sin(angle),
    centre - distance * Math.cos(angle),
  ]
  const spokes = Array.from({ length: faces }, (_, index) => {
    const [x, y] = at(index * step, radius)
    const [acrossX, acrossY] = [
      (Math.cos(index * step) * LINE_MM) / 2,
      (Math.sin(index * step) * LINE_MM) / 2,
    ]
    return polygon([
      [centre - acrossX, centre - acrossY],
      [centre + acrossX, centre + acrossY],
      [x + acrossX, y + acrossY],
      [x - acrossX, y - acrossY],
    ])
  })
  const numbers = Array.from({ length: faces }, (_, index) => {
    const art = write(String(index + 1), Math.min(radius * 0.24, (radius * step) / 3))
    const [x, y] = at((index + 0.5) * step, radius * 0.74)
    return moveArt(art, x - art.widthMm / 2, y - art.heightMm / 2, room)
  })
  const ink = (d: string, fill = '#000000') => ({ kind: 'path', d, fill }) as const
  return {
    ...room,
    shapes: [
      ink(pathText(disc(centre, centre, radius))),
      ink(pathText(disc(centre, centre, radius - LINE_MM)), '#ffffff'),
      ...spokes.map(spoke => ink(pathText(spoke))),
      ink(pathText(disc(centre, centre, 1.2))),
      ...numbers.flatMap(({ shapes }) => shapes),
    ],
    text: numbers.flatMap(({ text }) => text),
  }
}

function drawGrid(numbers: readonly (readonly number[])[], room: Size, write: Write): Art {
  const count = numbers.length
  const cell = { widthMm: room.widthMm / count, heightMm: room.heightMm / count }
  const lines = drawCellLines({ room, columns: count, rows: count, lineMm: LINE_MM })
  const written = numbers.flatMap((row, y) =>
    row.map((number, x) => {
      const art = write(String(number), cell.heightMm * 0.6)
      return moveArt(
        art,
        x * cell.widthMm + (cell.widthMm - art.widthMm) / 2,
        y * cell.heightMm + (cell.heightMm - art.heightMm) / 2,
        room,
      )
    }),
  )
  return {
    ...room,
    shapes: [...lines.shapes, ...written.flatMap(({ shapes }) => shapes)],
    text: [...lines.text, ...written.flatMap(({ text }) => text)],
  }
}
