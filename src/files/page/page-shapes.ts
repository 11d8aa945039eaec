import type { Size } from '../../geometry.js'
import type { Shape } from '../../pieces/piece.js'
import type { CutLine, Sheet } from '../../sheets/sheet.js'
import { type Drawing, drawingGroups } from './drawing-order.js'

/** All that a picture of a page depends on. */
export interface PageShapes extends Size {
  /** In the order in which they are painted; cut lines come on top. */
  readonly drawings: readonly PlacedShapes[]
  readonly cuts: readonly CutLine[]
}

/** The shapes of an art on the page, and whether each stands on its head about its origin. */
export interface PlacedShapes {
  readonly shapes: readonly PlacedShape[]
  readonly turn: 0 | 180
}

/** A shape, or a word of one, and where its origin stands on the page. */
export interface PlacedShape {
  readonly shape: Shape
  readonly xMm: number
  readonly yMm: number
}

export function pageShapes(sheet: Sheet): PageShapes {
  const { widthMm, heightMm, cuts } = sheet
  return {
    widthMm,
    heightMm,
    cuts,
    drawings: drawingGroups(sheet).flatMap(each => each.drawings.map(placed)),
  }
}

/** A line of text is drawn word by word, for most of its words stand elsewhere too. */
function placed({ art, xMm, yMm, turn }: Drawing): PlacedShapes {
  const sign = turn === 0 ? 1 : -1
  const shapes: PlacedShape[] = []
  for (const shape of art.shapes)
    if (shape.kind === 'image' || shape.words === undefined) shapes.push({ shape, xMm, yMm })
    else
      for (const word of shape.words)
        shapes.push({ shape: word.outline, xMm: xMm + sign * word.xMm, yMm: yMm + sign * word.yMm })
  return { shapes, turn }
}
