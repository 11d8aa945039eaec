import type { Size } from '../../geometry.js'
import type { Art, PathShape, Shape } from '../piece.js'
import { lineOfWords } from './line-of-words.js'
import { changeLengths } from './path-numbers.js'
import { withLettersOf } from './placed-letters.js'

/** The art moved by (`xMm`, `yMm`), now as large as `size`. */
export function moveArt(art: Art, xMm: number, yMm: number, size: Size): Art {
  return {
    widthMm: size.widthMm,
    heightMm: size.heightMm,
    shapes: art.shapes.map(shape => moveShape(shape, xMm, yMm)),
    text: art.text.map(run => ({ ...run, xMm: run.xMm + xMm, baselineMm: run.baselineMm + yMm })),
  }
}

function moveShape(shape: Shape, xMm: number, yMm: number): Shape {
  if (shape.kind === 'image')
    return { ...shape, box: { ...shape.box, xMm: shape.box.xMm + xMm, yMm: shape.box.yMm + yMm } }
  if (shape.words === undefined)
    return withLettersOf(shape, { ...shape, d: movePath(shape, xMm, yMm) }, xMm, yMm)
  const words = shape.words.map(word => ({ ...word, xMm: word.xMm + xMm, yMm: word.yMm + yMm }))
  return lineOfWords(words, () => movePath(shape, xMm, yMm))
}

/** Path data holds absolute M L Q C Z alone, so its numbers are x and y in turn. */
function movePath({ d }: PathShape, xMm: number, yMm: number): string {
  return changeLengths(d, (mm, index) => mm + (index % 2 === 0 ? xMm : yMm))
}
