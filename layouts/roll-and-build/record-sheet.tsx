import type { Size } from '../../src/geometry.js'
import { mm } from '../../src/pieces/faces/face.js'
import type { Row } from '../../src/pieces/faces/flow-page.js'
import { Slot } from '../../src/pieces/faces/slot.js'
import { drawCellLines } from '../../src/pieces/parts/cell-lines.js'
import { WritingLine } from '../../src/pieces/parts/rules.js'
import { breakLines, linesHeight } from '../../src/pieces/text/break-lines.js'
import { Lines } from '../../src/pieces/text/lines.js'
import type { LayoutRequest } from '../layout.js'
import { drawPlaceBars } from './cube-net.js'

/** Between two lines that a child writes on: our own judgement, no source. */
const LEAST_LINE_MM = 13
const BOX_LINE_MM = 0.7
/** A die goes in and out of its box. */
const AROUND_DIE_MM = 6
const MOST_BOX_MM = 56
const BETWEEN_MM = 12
/** All of a game may be real words, or none; how it is played says the number. */
export const THROWS = 10
const COLUMNS = ['Real words', 'Not words yet'] as const

/** Boxes for the three dice in their order, and two columns of lines to write on. */
export function recordSheet(
  { type, measure }: Pick<LayoutRequest, 'type' | 'measure'>,
  { dieMm, room }: { readonly dieMm: number; readonly room: Size },
): readonly Row[] {
  const boxMm = Math.min(MOST_BOX_MM, dieMm + AROUND_DIE_MM, (room.widthMm - 4) / 3)
  const columnMm = (room.widthMm - BETWEEN_MM) / 2
  const widest = Math.max(...COLUMNS.flatMap(text => text.split(' ')).map(word => measure(word, 1, 700)))
  const sizeMm = Math.min(type.listTextMm * (type.large ? 1 : 1.3), columnMm / widest)
  const style = { sizeMm, weight: 700 } as const
  const headings = COLUMNS.map(text => breakLines(text, columnMm, style, measure))
  const lineMm = Math.max(LEAST_LINE_MM, type.listTextMm * 1.9)
  const boxes = boxesRow(boxMm)
  const headingMm = linesHeight(Math.max(...headings.map(lines => lines.length)), sizeMm) + 3
  const leftMm = room.heightMm * 0.86 - boxes.heightMm - headingMm
  const count = Math.max(THROWS, Math.floor(leftMm / lineMm))
  const lines = Array.from({ length: count }, () => twoLines(lineMm))
  const heading: Row = {
    heightMm: headingMm,
    heads: true,
    tree: (
      <div style={{ display: 'flex', width: '100%', gap: mm(BETWEEN_MM) }}>
        {headings.map(lines => (
          <Lines lines={lines} style={style} box={{ width: mm(columnMm) }} />
        ))}
      </div>
    ),
  }
  return [boxes, heading, ...lines]
}

/** Each with the bars of its die below. */
function boxesRow(boxMm: number): Row {
  const barsMm = { widthMm: boxMm * 0.36, heightMm: boxMm * 0.07 }
  const places = [0, 1, 2] as const
  return {
    heightMm: boxMm + barsMm.heightMm + 9,
    slots: Object.fromEntries(
      places.flatMap(place => [
        [
          `box ${place}`,
          {
            kind: 'art',
            draw: (box: Size) => drawCellLines({ room: box, columns: 1, rows: 1, lineMm: BOX_LINE_MM }),
          },
        ] as const,
        [`box bars ${place}`, { kind: 'art', draw: (box: Size) => drawPlaceBars(place, box) }] as const,
      ]),
    ),
    tree: (
      <div style={{ display: 'flex', width: '100%', justifyContent: 'center', gap: mm(2) }}>
        {places.map(place => (
          <div style={{ display: 'flex', flexDirection: 'column', alignItems: 'center', gap: mm(2) }}>
            <Slot name={`box ${place}`} style={{ width: mm(boxMm), height: mm(boxMm) }} />
            <Slot
              name={`box bars ${place}`}
              style={{ width: mm(barsMm.widthMm), height: mm(barsMm.heightMm) }}
            />
          </div>
        ))}
      </div>
    ),
  }
}

function twoLines(heightMm: number): Row {
  return {
    heightMm,
    underHeads: true,
    tree: (
      <div
        style={{
          display: 'flex',
          width: '100%',
          height: '100%',
          alignItems: 'flex-end',
          gap: mm(BETWEEN_MM),
        }}
      >
        <WritingLine />
        <WritingLine />
      </div>
    ),
  }
}
