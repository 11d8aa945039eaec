import type { Size } from '../../src/geometry.js'
import { moveArt } from '../../src/pieces/art/move-art.js'
import { pathText, rectangle } from '../../src/pieces/art/path-text.js'
import type { Art, PathShape } from '../../src/pieces/piece.js'
import { drawTextLine } from '../../src/pieces/text/text-line.js'
import type { Typeface } from '../../src/pieces/typeface/typeface.js'
import type { LadderStep } from '../../src/sets/games/ladder-steps.js'

/** Boxes for the sounds of a word, a wide one for x and qu; the one that changes is thick, and may show its letters. */
export interface RungBoxes {
  readonly step: LadderStep
  readonly letters: boolean
  readonly sizeMm: number
  readonly typeface: Typeface
  readonly room: Size
}

const THIN_MM = 0.35
const THICK_MM = 1.1
/** White between two boxes. */
const APART_MM = 0.8
/** White on either side of the letters in their box. */
const BESIDE_LETTERS_MM = 1.2
/** A box is as high as its letters with some white. */
const HEIGHT_EM = 1.45
const LEAST_BOX_EM = 0.65
const MOST_BOX_EM = 1.1

/** How wide the boxes are at least. */
export function rungBoxesWidth(boxes: Omit<RungBoxes, 'room'>): number {
  const { step, sizeMm } = boxes
  return changedWidth(boxes) + others(step) * sizeMm * LEAST_BOX_EM + (step.pieces.length - 1) * APART_MM
}

/** How many sounds stay. */
function others({ pieces, at }: LadderStep): number {
  return pieces.reduce((sum, { counts }, index) => sum + (index === at ? 0 : counts), 0)
}

function changedWidth({ step, letters, sizeMm, typeface }: Omit<RungBoxes, 'room'>): number {
  const piece = step.pieces[step.at]!
  const textMm = letters ? typeface.widthEm(piece.letters, 'bold') * sizeMm : 0
  return Math.max(textMm + 2 * (BESIDE_LETTERS_MM + THICK_MM), piece.counts * sizeMm * 0.8)
}

export function drawRungBoxes(boxes: RungBoxes): Art {
  const { step, letters, sizeMm, typeface, room } = boxes
  const changedMm = changedWidth(boxes)
  const leftMm = room.widthMm - changedMm - (step.pieces.length - 1) * APART_MM
  const eachMm = Math.min(sizeMm * MOST_BOX_EM, leftMm / Math.max(1, others(step)))
  const heightMm = Math.min(room.heightMm, sizeMm * HEIGHT_EM)
  const top = (room.heightMm - heightMm) / 2
  const shapes: PathShape[] = []
  let x = 0
  const text = drawTextLine({ typeface, text: step.pieces[step.at]!.letters, sizeMm, weight: 'bold' })
  let written: Art | undefined
  step.pieces.forEach(({ counts }, index) => {
    const isChanged = index === step.at
    const widthMm = isChanged ? changedMm : counts * eachMm
    shapes.push(boxOutline(x, top, widthMm, heightMm, isChanged ? THICK_MM : THIN_MM))
    if (isChanged && letters) {
      const { ascender, xHeight } = typeface.metrics
      const middle = (ascender - xHeight / 2) * sizeMm
      written = moveArt(text.art, x + (widthMm - text.art.widthMm) / 2, top + heightMm / 2 - middle, room)
    }
    x += widthMm + APART_MM
  })
  return { ...room, shapes: [...shapes, ...(written?.shapes ?? [])], text: written?.text ?? [] }
}

/** Four bars, so that every format draws the same width. */
function boxOutline(x: number, y: number, widthMm: number, heightMm: number, lineMm: number): PathShape {
  const bars = [
    rectangle(x, y, x + widthMm, y + lineMm),
    rectangle(x, y + heightMm - lineMm, x + widthMm, y + heightMm),
    rectangle(x, y, x + lineMm, y + heightMm),
    rectangle(x + widthMm - lineMm, y, x + widthMm, y + heightMm),
  ]
  return { kind: 'path', d: pathText(bars.flat()), fill: '#000000' }
}
