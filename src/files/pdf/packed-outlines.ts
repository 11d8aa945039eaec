import { deflateSync } from 'node:zlib'
import type { Sheet } from '../../sheets/sheet.js'
import { drawingOperators, shapeOperators } from './pdf-operators.js'

const packed = new WeakMap<Sheet, Buffer>()

/**
 * The outlines of all that stands on a page without pieces or pictures, packed as PDF takes them. A page of text has a megabyte of
 * them, and it is packed once for all the files in which it stands.
 */
export function packedOutlines(sheet: Sheet): Buffer {
  const known = packed.get(sheet) ?? deflateSync(outlinesOf(sheet))
  packed.set(sheet, known)
  return known
}

function outlinesOf({ furniture }: Sheet): string {
  return furniture
    .map(({ art, xMm, yMm }) => {
      const shapes = art.shapes.flatMap(shape => (shape.kind === 'path' ? [shapeOperators(shape)] : []))
      return drawingOperators({ art, xMm, yMm, turn: 0 }, shapes.join('\n'))
    })
    .join('\n')
}
