/** What a calibration sheet measures with: a cross to prick a pin through, and a field of millimetres behind it. */
import type { Art, PlacedArt } from '../../src/pieces/piece.js'
import type { Lettering } from '../../src/sheets/furniture/lettering.js'
import { drawStrokes, type Segment } from '../../src/sheets/furniture/strokes.js'

/** How far a printer may miss and still be read. */
const REACH_MM = 6

/** Lines thin enough that a pin hole, about half a millimetre wide, shows between them. */
const THIN_MM = 0.12
const AXIS_MM = 0.3
const NUMBER_MM = 2
const WORD_MM = 3

/** A cross about (0, 0). */
export function pinMark(): PlacedArt {
  const size = { widthMm: 12, heightMm: 12 }
  const segments: readonly Segment[] = [
    [0, 6, 12, 6],
    [6, 0, 6, 12],
  ]
  return { art: drawStrokes({ size, segments, widthMm: 0.2 }), xMm: -6, yMm: -6 }
}

/** A square of millimetre lines about (0, 0), numbered along its foot and its right, the four directions in words. */
export function pinScale(lettering: Lettering): readonly PlacedArt[] {
  const lines = Array.from({ length: 2 * REACH_MM + 1 }, (_, step) => step - REACH_MM)
  return [
    field(
      lines.filter(at => at !== 0),
      THIN_MM,
    ),
    field([0], AXIS_MM),
    ...lines.filter(at => at % 2 === 0).flatMap(at => numbersAt(at, lettering)),
    ...directions(lettering),
  ]
}

function field(positions: readonly number[], widthMm: number): PlacedArt {
  const size = { widthMm: 2 * REACH_MM, heightMm: 2 * REACH_MM }
  const segments = positions.flatMap((at): readonly Segment[] => [
    [REACH_MM + at, 0, REACH_MM + at, 2 * REACH_MM],
    [0, REACH_MM + at, 2 * REACH_MM, REACH_MM + at],
  ])
  return { art: drawStrokes({ size, segments, widthMm }), xMm: -REACH_MM, yMm: -REACH_MM }
}

function numbersAt(at: number, lettering: Lettering): readonly PlacedArt[] {
  const art = lettering({ text: String(Math.abs(at)), sizeMm: NUMBER_MM })
  return [
    { art, xMm: at - art.widthMm / 2, yMm: REACH_MM + 0.5 },
    { art, xMm: REACH_MM + 0.8, yMm: at - art.heightMm / 2 },
  ]
}

function directions(lettering: Lettering): readonly PlacedArt[] {
  const word = (text: string): Art => lettering({ text, sizeMm: WORD_MM })
  const [right, left, up, down] = [word('right'), word('left'), word('up'), word('down')] as const
  const clear = REACH_MM + 3
  return [
    { art: right, xMm: clear, yMm: -right.heightMm / 2 },
    { art: left, xMm: 1.5 - clear - left.widthMm, yMm: -left.heightMm / 2 },
    { art: up, xMm: -up.widthMm / 2, yMm: 1.5 - clear - up.heightMm },
    { art: down, xMm: -down.widthMm / 2, yMm: clear },
  ]
}
